import { said } from "../messages/said.ts";
import { found } from "../units/fields.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import type { Board } from "./board.ts";
import { type Fault, type FaultMode, faultName } from "./fault.ts";
import { faultSites } from "./fault-sites.ts";
import { aKind } from "./kinds.ts";

const MODES: readonly FaultMode[] = ["short", "leaky", "open", "drift"];
const AMOUNT = /^(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

function wrong(text: string, what: string): { readonly ok: false; readonly problem: string } {
  return { ok: false, problem: said`fault ${quoted(text)}: ${what}` };
}

function readAmount(text: string, amount: string | undefined): Parsed<number | null> {
  if (amount === undefined) return { ok: true, value: null };
  const value = AMOUNT.test(amount) ? Number(amount) : Number.NaN;
  if (!Number.isFinite(value) || value <= 0)
    return wrong(
      text,
      said`${quoted(amount)} behind @ is not a number above 0 (ohms, or farads for a capacitor)`,
    );
  return { ok: true, value };
}

/** `REF:mode`, `REF.junction:mode` or `NET1~NET2:leaky`, each with an optional `@value`, checked against the board. */
export function parseFault(text: string, board: Board): Parsed<Fault> {
  const shape = /^([^:@]+):([^:@]+)(?:@(.*))?$/s.exec(text);
  if (shape === null) return wrong(text, said`expected REF:mode, REF.junction:mode or NET1~NET2:leaky`);
  const [, where = "", modeText = "", amountText] = shape;
  const mode = MODES.find((known) => known === modeText);
  if (mode === undefined)
    return wrong(text, `${said`${quoted(modeText)} is no mode`}${suggestion(modeText, MODES)}`);
  const amount = readAmount(text, amountText);
  if (!amount.ok) return amount;
  if (mode === "open" && amount.value !== null) return wrong(text, said`an open takes no value`);
  return where.includes("~")
    ? leakBetween(text, where, mode, amount.value, board)
    : faultOfPart(text, where, mode, amount.value, board);
}

function leakBetween(
  text: string,
  where: string,
  mode: FaultMode,
  value: number | null,
  board: Board,
): Parsed<Fault> {
  const [one = "", other = "", ...rest] = where.split("~");
  if (rest.length > 0) return wrong(text, said`a leak lies between two nets`);
  if (mode !== "leaky") return wrong(text, said`between two nets only leaky is a fault`);
  for (const net of [one, other])
    if (!board.nets.has(net))
      return wrong(text, `${said`there is no net ${quoted(net)}`}${suggestion(net, [...board.nets.keys()])}`);
  if (one === other) return wrong(text, said`a leak lies between two different nets`);
  return { ok: true, value: { of: "nets", nets: [one, other], mode, value } };
}

function faultOfPart(
  text: string,
  where: string,
  mode: FaultMode,
  value: number | null,
  board: Board,
): Parsed<Fault> {
  const dot = where.indexOf(".");
  const ref = dot < 0 ? where : where.slice(0, dot);
  const named = dot < 0 ? null : where.slice(dot + 1);
  const part = board.parts.get(ref);
  if (part === undefined)
    return wrong(text, `${said`there is no part ${quoted(ref)}`}${suggestion(ref, [...board.parts.keys()])}`);
  const sites = faultSites(part);
  const known = sites.flatMap((site) => (site.junction === null ? [] : [site.junction]));
  // A shunt reference has the one junction `ka`, which a plain mode means too.
  const site =
    named === null && sites.length === 1 && part.kind !== "transformer"
      ? sites[0]
      : sites.find((one) => one.junction === named);
  if (site === undefined) {
    if (named === null) return wrong(text, said`${ref} has several junctions; name one: ${known.join(" ")}`);
    if (known.length === 0)
      return wrong(text, said`${ref} (${part.kind}) has only one junction; write ${ref}:${mode}`);
    return wrong(
      text,
      `${said`${ref} (${part.kind}) has no junction ${quoted(named)}`}${suggestion(named, known)}`,
    );
  }
  if (!site.modes.includes(mode))
    return wrong(text, said`${aKind(part.kind)} cannot ${mode}; its modes: ${site.modes.join(" ")}`);
  return { ok: true, value: { of: "part", part: ref, junction: site.junction, mode, value } };
}

/** What two faults may not share: the junction, or the pair of nets whichever way round. */
export function faultSite(fault: Fault): string {
  return fault.of === "nets" ? [...fault.nets].sort().join("~") : `${fault.part}.${fault.junction ?? ""}`;
}

/** A set of faults, as a list of texts or as one text with commas; two faults of one junction exclude each other. */
export function parseFaultList(input: unknown, board: Board): Parsed<readonly Fault[]> {
  const texts: readonly unknown[] | null =
    typeof input === "string"
      ? input.trim() === ""
        ? []
        : input.split(",")
      : Array.isArray(input)
        ? input
        : null;
  if (texts === null)
    return { ok: false, problem: `faults: ${said`expected a list of faults, found ${found(input)}`}` };
  const faults: Fault[] = [];
  const sites = new Map<string, Fault>();
  for (const [index, text] of texts.entries()) {
    if (typeof text !== "string")
      return { ok: false, problem: `faults[${index}]: ${said`expected text, found ${found(text)}`}` };
    const fault = parseFault(text.trim(), board);
    if (!fault.ok) return fault;
    const before = sites.get(faultSite(fault.value));
    if (before !== undefined)
      return wrong(
        text.trim(),
        said`excludes ${quoted(faultName(before))}: one junction has one fault at a time`,
      );
    sites.set(faultSite(fault.value), fault.value);
    faults.push(fault.value);
  }
  return { ok: true, value: faults };
}
