import type { Command } from "commander";
import { ohmsOfBands, printedOhms } from "../../parts/values/resistor-marking.ts";
import type { Parsed } from "../../units/outcome.ts";
import { nearestPreferred, type Series } from "../../units/preferred-values.ts";
import { formatQuantity } from "../../units/quantity.ts";
import type { Finish, Io } from "../io.ts";
import { figures, type Told, told } from "../told.ts";
import { addCharge } from "./values-charge.ts";
import { addElectrolytic } from "./values-electrolytic.ts";

interface Json {
  readonly json?: true;
}

export function addValues(program: Command, io: Io, finish: Finish): void {
  const values = program
    .command("values")
    .description("what a marking says, when a capacitor is worn out, and what its charge may do")
    .addHelpText(
      "after",
      `
Examples:
  $ faultwright values resistor yellow violet red gold
  $ faultwright values resistor 4K6
  $ faultwright values electrolytic --farads 470u --volts 450
  $ faultwright values charge --farads 680u --volts 325 --ohms 100k`,
    );
  const answer = (made: () => Parsed<Told>, { json }: Json) => finish(() => told(made, json === true, io));
  values
    .command("resistor")
    .description("colour bands, or a printed value, as ohms; and the nearest values that are sold")
    .argument("<marking...>", "three to five colours, or one value as 4K7")
    .option("--json", "one JSON object for a script")
    .action((marking: readonly string[], options: Json) => answer(() => resistor(marking), options));
  addElectrolytic(values, answer);
  addCharge(values, answer);
}

const SERIES: readonly Series[] = ["E12", "E24", "E96"];

/** A burnt resistor was most likely a value that is sold. */
function resistor(marking: readonly string[]): Parsed<Told> {
  const [only = ""] = marking;
  const isPrinted = marking.length === 1 && /\d/.test(only);
  const printed = isPrinted ? figures({ marking: only }) : null;
  if (printed !== null && !printed.ok) return printed;
  const bands = printed === null ? ohmsOfBands(marking) : null;
  if (bands !== null && !bands.ok) return bands;
  const ohms = printed?.value.marking ?? bands?.value.ohms ?? 0;
  if (!(ohms > 0)) return { ok: false, problem: "marking: a resistor of 0 ohm is a wire" };
  const nearest = Object.fromEntries(SERIES.map((series) => [series, nearestPreferred(ohms, series)]));
  const code = printedOhms(ohms);
  const tolerance = bands?.value.tolerance ?? null;
  const text = [
    `${formatQuantity(ohms, "ohm")}${tolerance === null ? "" : `, ${tolerance * 100} %`}${code.ok ? `, printed ${code.value}` : ""} (IEC 60062)`,
    ...(bands !== null && tolerance === null
      ? ["the last colour is read differently in different lists"]
      : []),
    ...(bands?.value.usual === false
      ? ["two digits belong to 5 % and wider, three to 2 % and tighter: read it from the other end too"]
      : []),
    `nearest sold: ${SERIES.map((series) => `${series} ${formatQuantity(nearest[series] ?? 0, "ohm")}`).join(", ")} (IEC 60063)`,
  ];
  const json = {
    ohms,
    tolerance,
    usual: bands?.value.usual ?? null,
    printed: code.ok ? code.value : null,
    nearest,
  };
  return { ok: true, value: { json, text: `${text.join("\n")}\n` } };
}
