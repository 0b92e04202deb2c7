/** The shop's own name and terms, as `serve` keeps them: the page and the terminal begin new jobs with the same figures. */
import type { Command } from "commander";
import type { OwnWarranty } from "../../job/own-warranty.ts";
import { TERM_FIELDS } from "../../job/read-terms.ts";
import { changedShop } from "../../job/shop.ts";
import { DEFAULT_TERMS } from "../../money/terms.ts";
import { quoted, suggestion } from "../../units/nearest.ts";
import type { Parsed } from "../../units/outcome.ts";
import { answerText, table } from "../answer-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { changeShop, DATA_HELP, keptShop, keptWarranty } from "../kept-shop.ts";
import { loadJob } from "../load-job.ts";
import { replaceFile } from "../replace-file.ts";

interface ShopOptions {
  readonly data?: string;
  readonly json?: true;
}

const SHOP_TERMS = TERM_FIELDS.filter((name) => name !== "agreedPrice");

const HELP = `
Terms: ${SHOP_TERMS.join(" ")}
Shares are shares here (taxRate=0.2 is 20 %); boardStays is yes or no. A term set to nothing (taxRate=) is the usual one again.

Examples:
  $ faultwright shop
  $ faultwright shop set ratePerHour=45 usualPrice=150 "name=Bench 4, Mill Lane"
  $ faultwright shop into job.json        a job file without terms gets the shop's`;

export function addShop(program: Command, io: Io, finish: Finish): void {
  const shop = program
    .command("shop")
    .description("the shop's name and terms, with which the page starts every new job")
    .addHelpText("after", HELP);
  const kept = (command: Command) => command.option("--data <folder>", DATA_HELP);
  kept(shop.command("show", { isDefault: true }))
    .description("what is kept")
    .option("--json", "one JSON object for a script")
    .action((options: ShopOptions) => finish(() => show(options, io)));
  kept(shop.command("set"))
    .description("keep these from now on; jobs that are open keep the terms they have")
    .argument("<name=value...>", "terms, or name=... for the head of papers")
    .action((settings: readonly string[], options: ShopOptions) => finish(() => keep(settings, options, io)));
  kept(shop.command("into"))
    .description("write the shop's terms into a job file that has none")
    .argument("<job>", "a job file")
    .action((file: string, options: ShopOptions) => finish(() => writeInto(file, options, io)));
}

async function show({ data, json }: ShopOptions, io: Io): Promise<number> {
  const shop = await keptShop(data);
  if (json === true) io.out(answerText(shop));
  else {
    const usual = new Map(Object.entries({ ...DEFAULT_TERMS, usualPrice: DEFAULT_TERMS.agreedPrice }));
    const rows = SHOP_TERMS.map((name) => {
      const own = shop.terms[name];
      return [name, String(own ?? usual.get(name)), own === undefined ? "as usual" : "the shop's"];
    });
    const { currency, comebackCost } = { ...DEFAULT_TERMS, ...shop.terms };
    const own = await keptWarranty(data, String(currency), Number(comebackCost));
    io.out(
      `${shop.name === "" ? "no name is kept" : shop.name}\n${table(rows)}${warrantyText(own, String(currency))}`,
    );
  }
  return DONE;
}

/** What the shop's own comebacks say of `warrantyCost`. */
function warrantyText(own: OwnWarranty | null, currency: string): string {
  if (own === null || own.repaired === 0) return "";
  const { repaired, comebacks, costOfOne } = own;
  const cost = costOfOne.toFixed(2);
  return `${repaired} repaired, ${comebacks} came back: ${cost} ${currency} for each repair (the usual share of comebacks counts as the first twenty); shop set warrantyCost=${cost} sets it aside\n`;
}

/** One setting as it is typed; the value is judged with the rest of the terms. */
function settingOf(text: string): Parsed<readonly [string, unknown]> {
  const at = text.indexOf("=");
  const [name, value] = [text.slice(0, Math.max(at, 0)), text.slice(at + 1).trim()];
  const known = ["name", ...SHOP_TERMS];
  if (at < 1) return { ok: false, problem: `${quoted(text)}: expected a setting such as ratePerHour=45` };
  if (!known.includes(name))
    return { ok: false, problem: `${name}: the shop has no such setting${suggestion(name, known, 20)}` };
  if (name === "name" || name === "currency") return { ok: true, value: [name, value] };
  if (value === "" || (name === "boardStays" && value === "no"))
    return { ok: true, value: [name, undefined] };
  if (name === "boardStays" && value === "yes") return { ok: true, value: [name, true] };
  const amount = Number(value);
  return { ok: true, value: [name, Number.isFinite(amount) ? amount : value] };
}

async function keep(settings: readonly string[], { data }: ShopOptions, io: Io): Promise<number> {
  const changes: (readonly [string, unknown])[] = [];
  for (const text of settings) {
    const setting = settingOf(text);
    if (!setting.ok) return refuse(io, setting.problem);
    changes.push(setting.value);
  }
  const kept = await changeShop(data, (before) => {
    const { name = before.name, ...terms } = Object.fromEntries(changes);
    const set = Object.entries({ ...before.terms, ...terms }).filter(([, value]) => value !== undefined);
    return changedShop(before, { name, terms: Object.fromEntries(set) });
  });
  if (!kept.ok) return refuse(io, `${kept.problem}; nothing was kept`);
  return show(data === undefined ? {} : { data }, io);
}

async function writeInto(file: string, { data }: ShopOptions, io: Io): Promise<number> {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { content } = loaded.value;
  if (content.terms !== undefined)
    return refuse(io, `${file}: terms: are there already; a job keeps the terms that it was begun with`);
  const shop = await keptShop(data);
  if (Object.keys(shop.terms).length === 0)
    return refuse(io, "the shop has set no terms yet: faultwright shop set ratePerHour=45");
  replaceFile(file, `${JSON.stringify({ ...content, terms: shop.terms }, null, 2)}\n`);
  io.out(`${file} has the shop's terms\n`);
  return DONE;
}
