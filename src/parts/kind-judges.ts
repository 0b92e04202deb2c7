/** Rules about what a part is rather than about one rating of it. */

import type { PartKind } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { kindWords } from "./judges.ts";
import type { PartRole } from "./part-role.ts";
import { type Judge, judged } from "./rule.ts";

const SWITCHES: readonly PartKind[] = ["igbt", "mosfet"];
/** Kinds that may stand in each role beside the original's own; what else they must hold to, other rules say. */
const ALSO: Readonly<Partial<Record<PartRole, readonly PartKind[]>>> = {
  "motor switch": SWITCHES,
  "boost switch": SWITCHES,
  "resonant switch": SWITCHES,
  "small switch": SWITCHES,
};

/** A part of the kind that stood there. A wire is spoken of by rules of its own. */
export const rightKind = judged("", ({ kind, role }, { type }) => {
  if (type.kind === kind || ALSO[role]?.includes(type.kind) === true)
    return { says: "meets", words: kindWords(type.kind) };
  if (type.kind === "link" && kind !== "link") return null;
  return { says: "bars", words: said`a ${kindWords(type.kind)} where a ${kindWords(kind)} was` };
});

/** No wire where a part was. */
export const noWire = judged(said`no wire`, ({ kind }, { type }) =>
  type.kind === "link" && kind !== "link"
    ? { says: "bars", words: said`a wire where a ${kindWords(kind)} was` }
    : null,
);

/** A MOSFET in an IGBT's place. */
export function noMosfet(says: "bars" | "asks"): Judge {
  return judged(
    says === "bars" ? said`an IGBT` : said`an IGBT, or the design checked`,
    ({ kind }, { type }) =>
      kind === "igbt" && type.kind === "mosfet" ? { says, words: said`a MOSFET where an IGBT was` } : null,
  );
}

/** Another type in one place of a set. */
export const allAlike = judged(
  ({ alike }) => (alike.length === 0 ? "" : said`one type in the whole set`),
  ({ alike, name }, { type }) => {
    if (alike.length === 0 || name === type.name) return null;
    return {
      says: "asks",
      words: said`another type than in ${alike.join(" ")}: change them all to one type`,
    };
  },
);

/** One of a pair that shares its current. */
export const pairTogether = judged(
  ({ parallel }) => (parallel.length === 0 ? "" : said`both of the pair, from one batch`),
  ({ parallel }) =>
    parallel.length === 0
      ? null
      : { says: "asks", words: said`${parallel.join(" ")} stands beside it: change both, from one batch` },
);

/** A part from another board. */
export const pulled = judged(said`a pulled part only after its check`, (_, { used }) =>
  used
    ? { says: "asks", words: said`pulled from another board: check it as listed before it goes in` }
    : null,
);

/** The same type by name, where nothing less will do. */
export function sameType(otherwise: "bars" | "asks"): Judge {
  return judged(said`the same type`, ({ name }, { type }) => {
    if (name === null)
      return {
        says: "open",
        unknown: "original",
        words: said`the original's marking is not known; read it off the part`,
      };
    if (name === type.name) return { says: "meets", words: said`the same type, ${name}` };
    return { says: otherwise, words: said`${type.name} where ${name} was` };
  });
}

/** A role for which there is no table. */
export const likeByLike = judged(said`the same type`, ({ name, kind }, { type }) =>
  name === type.name
    ? null
    : {
        says: "asks",
        words: said`no table speaks of this ${kindWords(kind)}: compare every rating yourself`,
      },
);
