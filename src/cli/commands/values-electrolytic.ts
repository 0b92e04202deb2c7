/** When an electrolytic capacitor is worn out, by makers' data sheets. */
import type { Command } from "commander";
import {
  esrOhms,
  grossLeakage,
  LOSS_TABLES,
  leakageAboveHundredVolts,
  leakageAfterAMinute,
  leakageToHundredVolts,
  lifeHours,
  lifeOverProfile,
  strictLeakage,
  surgeVolts,
  tanDeltaLimit,
  wornOut,
} from "../../parts/values/capacitor-limits.ts";
import type { Parsed } from "../../units/outcome.ts";
import { formatQuantity } from "../../units/quantity.ts";
import { table } from "../answer-text.ts";
import { figures, type Told } from "../told.ts";

type Answer = (made: () => Parsed<Told>, options: Json) => void;

interface Json {
  readonly json?: true;
}

export function addElectrolytic(values: Command, answer: Answer): void {
  values
    .command("electrolytic")
    .description(
      "leakage, loss and ESR above which one is worn out, by makers' data sheets; its surge, its life",
    )
    .requiredOption("--farads <farads>", "capacitance")
    .requiredOption("--volts <volts>", "rated voltage")
    .option("--hertz <hertz>", "at which ESR is read", "120")
    .option("--hours <hours>", "rated life", "2000")
    .option("--rated <degC>", "at which it is rated", "105")
    .option("--at <degC>", "where it lives", "65")
    .option("--day <share:degC...>", "a daily round in its place, as 0.3:85 0.7:45")
    .option("--read <figure=value...>", "what was read of it, as farads=380u esr=0.4 leakage=2m")
    .option("--json", "one JSON object for a script")
    .action((options: ElectrolyticOptions) => answer(() => electrolytic(options), options));
}

interface ElectrolyticOptions extends Json {
  readonly farads: string;
  readonly volts: string;
  readonly hertz: string;
  readonly hours: string;
  readonly rated: string;
  readonly at: string;
  readonly day?: readonly string[];
  readonly read?: readonly string[];
}

const LEAKAGES: readonly {
  readonly after: string;
  readonly source: string;
  readonly limit: (farads: number, volts: number) => Parsed<number>;
}[] = [
  { after: "2 min", source: "Lelon RGA, Nichicon RS", limit: leakageToHundredVolts },
  { after: "5 min", source: "Vishay 038 RSU", limit: strictLeakage },
  { after: "5 min", source: "Lelon RGA", limit: leakageAboveHundredVolts },
  { after: "1 min", source: "Nichicon RS", limit: leakageAfterAMinute },
  { after: "any time, gross reject", source: "JAN-C-62 in amradio msg21215", limit: grossLeakage },
];

function electrolytic(options: ElectrolyticOptions): Parsed<Told> {
  const { farads: f, volts: v, hertz: h, hours, rated, at } = options;
  const read = figures({ farads: f, volts: v, hertz: h, hours, rated, at });
  if (!read.ok) return read;
  const { farads, volts, hertz } = read.value;
  const surge = surgeVolts(volts);
  if (!surge.ok) return surge;
  const life = lifeOf(options, read.value);
  if (!life.ok) return life;
  const leakage = LEAKAGES.flatMap(({ after, source, limit }) => {
    const amps = limit(farads, volts);
    return amps.ok ? [{ after, source, amps: amps.value }] : [];
  });
  const loss = LOSS_TABLES.flatMap((source) => {
    const limit = tanDeltaLimit(farads, volts, source);
    const esr = limit.ok ? esrOhms(limit.value, hertz, farads) : limit;
    return limit.ok && esr.ok ? [{ source, tanDelta: limit.value, esrOhms: esr.value }] : [];
  });
  const rows = [
    ...leakage.map(({ after, source, amps }) => [
      `leakage at ${volts} V after ${after}, at most`,
      formatQuantity(amps, "A"),
      source,
    ]),
    ...loss.map(({ source, tanDelta, esrOhms: ohms }) => [
      `tan delta new at 120 Hz, and ESR at ${hertz} Hz; worn out at twice that`,
      `${Number(tanDelta.toPrecision(3))}, ${formatQuantity(ohms, "ohm")}`,
      source,
    ]),
    ["capacitance, worn out outside", "80 to 120 %", "Lelon RGA, Nichicon RS"],
    ["surge, at most", `${Math.round(surge.value)} V`, "Vishay 038 RSU"],
    [
      `life at ${Number(life.value.degC.toPrecision(3))} degC, ripple aside`,
      `${Math.round(life.value.hours)} h`,
      options.day === undefined
        ? "ten-degree rule"
        : "ten-degree rule, shares of life added up (Cosel FAQ a0057)",
    ],
  ];
  const lelon = leakage.find(({ source }) => source.includes("Lelon RGA"));
  const worn = wornBy(options.read ?? [], farads, lelon?.amps, loss[0]?.esrOhms);
  if (!worn.ok) return worn;
  if (worn.value !== null)
    rows.push([
      "as it was read",
      worn.value.length === 0 ? "not worn out" : `worn out: ${worn.value.join(", ")}`,
      "Lelon RGA, Nichicon RS",
    ]);
  const json = {
    leakage,
    loss,
    surgeVolts: surge.value,
    lifeHours: life.value.hours,
    lifeDegC: life.value.degC,
    wornOut: worn.value,
  };
  return { ok: true, value: { json, text: table(rows) } };
}

/** Hours where it lives, or under a daily round; and the one temperature that would come to the same. */
function lifeOf(
  { day }: ElectrolyticOptions,
  { hours, rated, at }: Readonly<Record<"hours" | "rated" | "at", number>>,
): Parsed<{ readonly hours: number; readonly degC: number }> {
  if (day === undefined) {
    const life = lifeHours(hours, rated, at);
    return life.ok ? { ok: true, value: { hours: life.value, degC: at } } : life;
  }
  const profile: { degC: number; share: number }[] = [];
  for (const text of day) {
    const [share = "", degC = ""] = text.split(":");
    const read = figures({ share, degC });
    if (!read.ok) return { ok: false, problem: `--day: "${text}": expected a share and degrees, as 0.3:85` };
    profile.push(read.value);
  }
  const life = lifeOverProfile(hours, rated, profile);
  return life.ok ? { ok: true, value: { hours: life.value.hours, degC: life.value.equalDegC } } : life;
}

/** What of the readings says that it is worn out, by its limits when new; null where nothing was read. */
function wornBy(
  readings: readonly string[],
  farads: number,
  leakageAmps: number | undefined,
  newEsrOhms: number | undefined,
): Parsed<readonly string[] | null> {
  if (readings.length === 0) return { ok: true, value: null };
  const shares = { farads: 1, esr: 0, leakage: 0 };
  for (const text of readings) {
    const [name = "", value = ""] = text.split("=");
    const read = figures({ read: value });
    if (!read.ok || !Object.hasOwn(shares, name))
      return { ok: false, problem: `--read: "${text}": expected farads=, esr= or leakage= and a figure` };
    const limit = { farads, esr: newEsrOhms, leakage: leakageAmps }[name as keyof typeof shares];
    if (limit === undefined)
      return { ok: false, problem: `--read: ${name}: no limit is known at this voltage` };
    shares[name as keyof typeof shares] = read.value.read / limit;
  }
  return {
    ok: true,
    value: wornOut({
      capacitanceShare: shares.farads,
      tanDeltaShare: shares.esr,
      leakageShare: shares.leakage,
    }),
  };
}
