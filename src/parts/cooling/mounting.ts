/** Screwing a part to its heatsink: how tight, and in which order. */
import { said } from "../../messages/said.ts";
import { downwards, upwards } from "../../units/hundredths.ts";
import type { Mark } from "../../units/mark.ts";
import type { Parsed } from "../../units/outcome.ts";
import type { PartRole } from "../part-role.ts";
import { LEAD_LIMITS } from "../rebuild/lead-protrusion.ts";
import { spacingFor } from "../rebuild/spacing.ts";

/** What one maker says of one case. Newton metres, M3 screw; null where it does not say. */
export interface Torque {
  readonly cases: readonly string[];
  readonly least: number | null;
  readonly usual: number | null;
  readonly most: number;
  readonly mark: Mark;
  readonly source: string;
}

/** One kilogram-force centimetre in newton metres. */
const KGF_CM = 0.0980665;

export const TORQUES: readonly Torque[] = [
  {
    cases: ["TO-220"],
    least: null,
    usual: 0.55,
    most: 0.7,
    mark: "seen-2nd",
    source: "ST TN1225, quoted at mithatkonar.com",
  },
  {
    cases: ["TO-247", "TO-247-4", "TO-3P", "TO-3PF"],
    least: null,
    usual: 0.55,
    most: 1,
    mark: "seen-2nd",
    source: "ST TN1225, quoted at mithatkonar.com",
  },
  {
    cases: ["TO-220"],
    least: null,
    usual: 0.5,
    most: 0.8,
    mark: "seen-2nd",
    source: "ST AN260, quoted at mithatkonar.com: little is gained above 0.50",
  },
  {
    cases: ["TO-220"],
    least: 0.49,
    usual: null,
    most: 0.686,
    mark: "seen",
    source: "Sanken data sheet, beike2008.cn p. 10",
  },
  {
    cases: ["TO-3P"],
    least: 0.686,
    usual: null,
    most: 0.822,
    mark: "seen",
    source: "Sanken data sheet, beike2008.cn p. 10",
  },
  {
    cases: ["TO-220"],
    least: null,
    usual: null,
    most: 1,
    mark: "seen",
    source: "Infineon, board assembly of TO packages rev 4.0 p. 21",
  },
  { cases: ["TO-247"], least: null, usual: null, most: 1.1, mark: "seen", source: "IRG4PC50SD data sheet" },
  {
    cases: ["TO-247"],
    least: 6 * KGF_CM,
    usual: null,
    most: 12 * KGF_CM,
    mark: "seen",
    source: "40EPS bulletin I2104 rev C",
  },
];

export interface TorqueRange {
  readonly least: number;
  readonly most: number;
  readonly rows: readonly Torque[];
}

/**
 * The range that no source forbids: from the highest "least" or "usual" that stays under the lowest "most". A maker's own data sheet wins
 * over it.
 */
export function torqueRange(caseName: string): Parsed<TorqueRange> {
  const wanted = caseName
    .trim()
    .toUpperCase()
    .replace(/F$|FP$/, "");
  const rows = TORQUES.filter((row) =>
    row.cases.some((one) => one === wanted || one === caseName.trim().toUpperCase()),
  );
  if (rows.length === 0)
    return {
      ok: false,
      problem: `no torque is known for ${caseName}; known: ${[...new Set(TORQUES.flatMap((row) => row.cases))].join(" ")}`,
    };
  const most = Math.min(...rows.map((row) => row.most));
  const lower = rows.flatMap((row) => [row.least ?? 0, row.usual ?? 0]).filter((value) => value <= most);
  return { ok: true, value: { least: Math.max(...lower), most, rows } };
}

/** The order of the work. Common practice; new paste after every lift is also asked for by a maker's service text. */
export const ORDER_OF_WORK: readonly string[] = [
  said`clean both faces until no old paste is left; a pad that was squeezed once is replaced`,
  said`a thin even film of paste, no more than fills the grooves; a dry pad takes none`,
  said`put the part on its heatsink with spacer, bush and pad, leads through the board, not soldered`,
  said`snug all screws by hand, crosswise`,
  said`full torque, crosswise`,
  said`solder now, so that no lead carries the pull of a screw`,
  said`over 20 Mohm from each lead to the heatsink; read the junctions again, since a clamp can short a part that read well loose`,
  said`taken off again: clean, new paste, from the start`,
];

/** Roles whose part is screwed to a heatsink. Common practice. */
const ON_HEATSINK: ReadonlySet<PartRole> = new Set([
  "motor switch",
  "boost switch",
  "resonant switch",
  "power module",
  "boost diode",
  "bridge",
]);

export interface Mounting {
  /** `0.55 to 0.68 N m, M3`; null where the case is not known, or no torque for it */
  readonly torque: string | null;
  readonly order: readonly string[];
  /** how far its leads and a rebuilt area keep from the metal; null where no mains feeds the board */
  readonly distance: string | null;
}

/** What stands between the metal of this part and its heatsink: of the mains, and of the bus. */
export interface MainsVolts {
  readonly lineVolts: number;
  readonly busVolts: number;
}

/** Indoors, from a wall outlet, on ordinary laminate: where boards like these run. Common practice. */
const USUAL_PLACE = { category: "II", material: "III", insulation: "basic" } as const;

/** Lead ends, air and surface beside the heatsink, by the tables' steps. */
function distanceOf({ lineVolts, busVolts }: MainsVolts): string | null {
  const [dry, damp] = ([2, 3] as const).map((degree) =>
    spacingFor({ lineVolts, workingVolts: busVolts, degree, ...USUAL_PLACE }),
  );
  const [lead] = LEAD_LIMITS;
  if (dry?.ok !== true || damp?.ok !== true || lead === undefined) return null;
  const [air, surface, dirty] = [dry.value.clearanceMm, dry.value.creepageMm, damp.value.creepageMm].map(
    (mm) => Number(upwards(mm)),
  );
  return said`lead ends at most ${`${lead.mostMm} mm`} out of the solder, and ${`${air} mm`} of air from them to the heatsink; over a rebuilt area ${`${surface} mm`} along the surface, ${`${dirty} mm`} where it is damp or dirty, and twice all of it towards what a hand may touch (bus of ${`${Math.round(busVolts)} V`}; IEC 60664-1, seen at second hand)`;
}

/** How the part of this role goes back onto its heatsink; null where it has none. */
export function mountingOf(
  role: PartRole,
  caseName: string | undefined,
  mains: MainsVolts | null,
): Mounting | null {
  if (!ON_HEATSINK.has(role)) return null;
  const range = caseName === undefined ? null : torqueRange(caseName);
  const torque =
    range?.ok === true ? said`${upwards(range.value.least)} to ${downwards(range.value.most)} N m, M3` : null;
  return { torque, order: ORDER_OF_WORK, distance: mains === null ? null : distanceOf(mains) };
}
