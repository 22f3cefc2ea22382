/** The same fields, to be written over by whoever makes or owns the object. */
export type Mutable<T> = { -readonly [Name in keyof T]: T[Name] };
