/** What a board is known by: pictures, earlier jobs and what was learnt are found by it, so that a new name loses none of them. */

/** The identity in the file, else the name: most boards are never called anything else. */
export function identityOf({
  name,
  identity,
}: {
  readonly name: string;
  readonly identity?: string;
}): string {
  return identity ?? name;
}

/** The same of a board file's content, whether or not it is one; empty where it says neither. */
export function identityOfContent(content: unknown): string {
  const { identity, name } = (typeof content === "object" && content !== null ? content : {}) as {
    readonly identity?: unknown;
    readonly name?: unknown;
  };
  return [identity, name].find((one): one is string => typeof one === "string") ?? "";
}
