/** The same fields, writable: for the code that makes or owns the object. */
export type Mutable<T> = { -readonly [Name in keyof T]: T[Name] };
