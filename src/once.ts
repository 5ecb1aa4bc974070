/**
 * A value made when it is first asked for, and kept: tables and indexes that not every workbook needs cost nothing when
 * the add-in starts. `make` must give the same each time.
 */
export const once = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
};
