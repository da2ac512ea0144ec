package text

// Read sets dst to what parse reads in b, and changes nothing where it reads
// nothing: it is an UnmarshalText.
func Read[T any](dst *T, b []byte, parse func(string) (T, error)) error {
	v, err := parse(string(b))
	if err != nil {
		return err
	}
	*dst = v
	return nil
}

// Must returns what parse reads in s, and panics where it reads nothing, in the
// name of the function that a literal was given to.
func Must[T any](name, s string, parse func(string) (T, error)) T {
	v, err := parse(s)
	if err != nil {
		panic(name + ": " + err.Error())
	}
	return v
}
