/** The symbols placed on a schematic sheet: where each of their pins lies. */
import { bareName } from "./read-netlist.ts";
import { type List, listsOf, textOf } from "./s-expression.ts";

/** Where something is on the sheet, in whole units of a ten-thousandth of a millimetre (the format's own), y downwards. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface PlacedPin extends Spot {
  readonly number: string;
  readonly name: string;
  /** drawn as a supply pin that joins the net of its name by itself: of a power symbol, or hidden (older files) */
  readonly joins: string | null;
}

export interface PlacedSymbol {
  readonly line: number;
  readonly ref: string;
  readonly unit: number;
  /** more than one unit is drawn of this kind of symbol */
  readonly units: boolean;
  readonly value: string;
  readonly symbol: string;
  readonly description: string;
  readonly fitted: boolean;
  readonly pins: readonly PlacedPin[];
}

const STEPS_PER_MM = 10_000;

/** The spot behind a word such as `at` or `xy`. */
export function spotOf(list: List): Spot {
  const [, x, y] = list.items;
  return { x: Math.round(Number(x) * STEPS_PER_MM), y: Math.round(Number(y) * STEPS_PER_MM) };
}

/** Every symbol on the sheet, one a unit. */
export function placedSymbols(sheet: List): readonly PlacedSymbol[] {
  const drawn = new Map(
    listsOf(sheet, "lib_symbols")
      .flatMap((library) => listsOf(library, "symbol"))
      .map((symbol) => [String(symbol.items[1]), symbol]),
  );
  return listsOf(sheet, "symbol").map((symbol) => placedSymbol(symbol, drawn, sheet));
}

function placedSymbol(symbol: List, drawn: ReadonlyMap<string, List>, sheet: List): PlacedSymbol {
  const id = textOf(symbol, "lib_id") ?? "";
  const own = drawn.get(textOf(symbol, "lib_name") ?? id) ?? drawn.get(id);
  const unit = Number(textOf(symbol, "unit") ?? "1");
  const value = propertyOf(symbol, "Value");
  const style = textOf(symbol, "body_style") ?? textOf(symbol, "convert") ?? "1";
  const power = own !== undefined && listsOf(own, "power").length > 0;
  const all = own === undefined ? [] : unitsOf(own, drawn);
  const pins = all
    .filter((one) => [0, unit].includes(one.unit) && [0, Number(style)].includes(one.style))
    .flatMap(({ pins: ofUnit }) => ofUnit);
  return {
    line: symbol.line,
    ref: referenceOf(symbol, sheet),
    unit,
    units: all.some((one) => one.unit > 1),
    value,
    symbol: id.slice(id.indexOf(":") + 1),
    description:
      propertyOf(symbol, "Description") || (own === undefined ? "" : propertyOf(own, "Description")),
    fitted: textOf(symbol, "dnp") !== "yes",
    pins: pins.map((pin) => {
      const name = bareName(textOf(pin, "name") ?? "");
      const supply = pin.items[1] === "power_in";
      const hidden = pin.items.includes("hide") || textOf(pin, "hide") === "yes";
      let joins: string | null = null;
      if (supply && power) joins = value;
      else if (supply && hidden && name !== "") joins = name;
      return { number: textOf(pin, "number") ?? "", name, joins, ...turned(pin, symbol) };
    }),
  };
}

function propertyOf(list: List, name: string): string {
  const found = listsOf(list, "property").find(({ items }) => items[1] === name);
  return typeof found?.items[2] === "string" ? found.items[2] : "";
}

/** The reference in this sheet's own place, which a file used in several designs keeps apart; else the one that is shown. */
function referenceOf(symbol: List, sheet: List): string {
  const paths = listsOf(symbol, "instances")
    .flatMap((instances) => listsOf(instances, "project"))
    .flatMap((project) => listsOf(project, "path"));
  const here = paths.find(({ items }) => items[1] === `/${textOf(sheet, "uuid")}`);
  return (here === undefined ? null : textOf(here, "reference")) ?? propertyOf(symbol, "Reference");
}

/** `NAME_unit_style` of each drawn unit, with its pins; unit and style 0 belong to all. A symbol made from another has that one's. */
function unitsOf(
  symbol: List,
  drawn: ReadonlyMap<string, List>,
): readonly { readonly unit: number; readonly style: number; readonly pins: readonly List[] }[] {
  const from = textOf(symbol, "extends");
  const base =
    from === null ? undefined : [...drawn].find(([id]) => id.endsWith(`:${from}`) || id === from)?.[1];
  return listsOf(base ?? symbol, "symbol").map((one) => {
    const [unit = "0", style = "0"] = String(one.items[1]).split("_").slice(-2);
    return { unit: Number(unit), style: Number(style), pins: listsOf(one, "pin") };
  });
}

/** The pin's free end on the sheet: turned anticlockwise, then mirrored about an axis of the sheet. In the symbol y points up. */
function turned(pin: List, symbol: List): Spot {
  const [at] = listsOf(symbol, "at");
  const [own] = listsOf(pin, "at");
  if (at === undefined || own === undefined) return { x: Number.NaN, y: Number.NaN };
  const place = spotOf(at);
  const { x, y } = spotOf(own);
  const quarters = (Math.round(Number(at.items[3] ?? 0) / 90) + 4) % 4;
  const [alongX, alongY] = [
    [x, y],
    [-y, x],
    [-x, -y],
    [y, -x],
  ][quarters] ?? [x, y];
  const mirror = textOf(symbol, "mirror");
  return {
    x: place.x + (mirror === "y" ? -alongX : alongX),
    y: place.y - (mirror === "x" ? -alongY : alongY),
  };
}
