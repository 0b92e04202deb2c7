/** What a parser returns: the value, or one line that names the field, what is wrong and what would be right. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: string };
