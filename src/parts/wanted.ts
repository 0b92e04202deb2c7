/** What a place on the board asks of the part that goes into it. */
import type { Board, Part, PartKind, PartValue } from "../board/board.ts";
import { deriveRoles, type Roles } from "../board/roles.ts";
import { present } from "../units/fields.ts";
import { type PartRole, roleOf } from "./part-role.ts";
import type { Ratings } from "./ratings.ts";

export interface Wanted {
  readonly ref: string;
  readonly kind: PartKind;
  readonly role: PartRole;
  /** the original's name in the catalogue, where that is known */
  readonly name: string | null;
  /** what is known of the original: the board file's values, and the rest from the catalogue where it is named */
  readonly ratings: Ratings;
  /** parts across the same nets: they share the current, and are changed together */
  readonly parallel: readonly string[];
  /** the others of its set: motor switches, or capacitors of one bank */
  readonly alike: readonly string[];
}

/** The value fields of a board file under the names that ratings have. */
export function ratingsOfValue(value: PartValue): Ratings {
  return present<Ratings>({
    volts: value.volts,
    amps: value.amps,
    ohms: value.ohms,
    ohmsOn: value.ohmsOn,
    tolerance: value.tolerance,
    watts: value.watts,
    farads: value.farads,
    joules: value.joules,
    coilOhms: value.coilOhms,
    coilVolts: value.coilVolts,
    type: value.type,
    polarity: value.polarity,
    channel: value.channel,
    copack: value.diode,
  });
}

/** What the board file's format says where it is silent: an IGBT has its diode inside. */
const SILENT: Readonly<Partial<Record<PartKind, Ratings>>> = { igbt: { copack: true } };

/** Parts of the same kind between the same nets; each of a pair of switches has a gate net of its own. */
function acrossTheSame(board: Board, part: Part): readonly string[] {
  const pins = [...part.pins].filter(([pin]) => pin !== "g");
  return [...board.parts.values()]
    .filter((other) => {
      const same = pins.every(([pin, net]) => other.pins.get(pin) === net);
      return same && other !== part && other.kind === part.kind;
    })
    .map((other) => other.ref);
}

function alikeOf(roles: Roles, part: Part, role: PartRole): readonly string[] {
  const set =
    role === "motor switch"
      ? roles.motorSwitches.map((one) => one.part)
      : role === "bus capacitor"
        ? roles.busCapacitors
        : [];
  return set.includes(part.ref) ? [...new Set(set)].filter((ref) => ref !== part.ref) : [];
}

/** The part that was there, as far as its marking or its data sheet tells: a name only where one was read. */
export interface Original {
  readonly name: string | null;
  readonly ratings: Ratings;
}

/**
 * What the place of one part asks. `original` is the catalogue's entry of the part that was there, where its marking was read;
 * the board file's own values win over it.
 */
export function wantedAt(board: Board, part: Part, original: Original | null): Wanted {
  const roles = deriveRoles(board);
  const role = roleOf(board, roles, part);
  const ofBank = alikeOf(roles, part, role);
  const members = ofBank.filter(
    (ref) => role !== "bus capacitor" || board.parts.get(ref)?.value.type === "electrolytic",
  );
  return {
    ref: part.ref,
    kind: part.kind,
    role,
    name: original?.name ?? null,
    // what nobody has seen is drawn as the trade has it: nothing of it was read
    ratings: {
      ...SILENT[part.kind],
      ...original?.ratings,
      ...(part.assumed ? {} : ratingsOfValue(part.value)),
    },
    parallel: part.kind === "capacitor" ? [] : acrossTheSame(board, part),
    alike: members,
  };
}
