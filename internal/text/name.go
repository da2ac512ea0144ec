package text

import (
	"fmt"
	"strings"
)

// Name returns the name of a value of an enumeration, or "Grid(9)" for a value
// that has none. The names stand in the order of the values.
func Name[T ~uint8](kind string, v T, names []string) string {
	if int(v) < len(names) {
		return names[v]
	}
	return fmt.Sprintf("%s(%d)", kind, uint8(v))
}

// Named returns the value with the name, whatever its case, and false if there
// is none.
func Named[T ~uint8](name string, names []string) (v T, ok bool) {
	if len(name) > Limit {
		return 0, false
	}
	name = strings.TrimSpace(name)
	for i := range names {
		if strings.EqualFold(name, names[i]) {
			return T(i), true
		}
	}
	return 0, false
}

// Or lists what may be given: "red, green or blue". An empty name, that of a
// zero value which says nothing, is left out.
func Or(names []string) string {
	if len(names) > 0 && names[0] == "" {
		names = names[1:]
	}
	last := len(names) - 1
	if last < 1 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:last], ", ") + " or " + names[last]
}
