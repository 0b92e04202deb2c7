/** The list of drivers in what `sigrok-cli --list-supported` writes. */

export interface SigrokDriver {
  readonly name: string;
  readonly words: string;
}

/** Drivers in the order listed; none where the text is no such list. */
export function parseSigrokDrivers(text: string): readonly SigrokDriver[] {
  const [, listed = ""] = text.split(/^Supported hardware drivers:$/m);
  const [own = ""] = listed.split(/^\S/m);
  return [...own.matchAll(/^ {2}(\S+)\s+(\S.*)$/gm)].map(([, name = "", words = ""]) => ({ name, words }));
}
