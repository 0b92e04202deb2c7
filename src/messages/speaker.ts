/** Says the messages of one catalogue: names filled in, plurals chosen, numbers and money in the reader's form. */

import type { Catalogue, EnglishForms } from "./catalogue.ts";
import { type Direction, type Language, writingOf } from "./language.ts";
import { pluralForm } from "./plural-form.ts";

type Named<Text> = Text extends `${string}{${infer Name}}${infer Rest}` ? Name | Named<Rest> : never;
type TextOf<Message> = Message extends EnglishForms ? Message["other"] : Message;
type Given<Message> = [Named<TextOf<Message>>] extends [never]
  ? readonly []
  : readonly [Readonly<Record<Named<TextOf<Message>>, string | number>>];

export interface Speaker<English> {
  readonly language: Language;
  readonly direction: Direction;
  /** A number among the values is written in the reader's form; a text goes in as it is, set apart from what surrounds it. */
  say<K extends keyof English & string>(key: K, ...given: Given<English[K]>): string;
  /** at most `digits` behind the point, no trailing zeros */
  number(value: number, digits?: number): string;
  /** An exact decimal text such as `1234.50`, every digit kept, thousands set apart. */
  amount(decimal: string): string;
  /** The same in one piece: a line of a file, a count, a figure inside a sentence. */
  digits(decimal: string): string;
  /** A reading as a meter shows it (`0.455 V`): its digits kept, the decimal sign the reader's. */
  shown(reading: string): string;
  /** text of another direction, set apart from what stands around it */
  apart(text: string): string;
  /** several things in one line */
  list(items: readonly string[]): string;
  /** a share of one as whole per cent */
  percent(share: number): string;
  /** a day as `2026-11-27`, written out */
  day(iso: string): string;
}

/** First strong isolate and its end (UAX 9): a Latin name inside Arabic keeps its own order and moves nothing around it. */
const ISOLATE = "\u2068";
const END_ISOLATE = "\u2069";
const PLACE = /\{(\w+)\}/g;
/** Between the digits of a figure: in `U1.3` it parts a pin from its part, in `10.0.0.7` it is an address. */
const DECIMAL_POINT = /(?<![A-Za-z\d.])(\d+)\.(?=\d+(?!\d*\.\d))/g;

export function speaker<English>(catalogue: Catalogue<keyof English & string>): Speaker<English> {
  const { language } = catalogue;
  const { locale, direction } = writingOf(language);
  const plural = new Intl.PluralRules(locale);
  const number = (value: number, digits = 2) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: digits }).format(value);
  const apart = (text: string) =>
    direction === "rtl" && /[0-9A-Za-z]/.test(text) && !text.includes(ISOLATE)
      ? `${ISOLATE}${text}${END_ISOLATE}`
      : text;
  const point = decimalSign(locale.replace(/-nu-\w+$/, "-nu-latn"));
  const say = (
    key: keyof English & string,
    ...[given = {}]: readonly [] | readonly [Readonly<Record<string, string | number>>]
  ) => {
    const message = catalogue.texts[key];
    const text = typeof message === "string" ? message : formOf(message, plural, given.count);
    return text.replace(PLACE, (place, name: string) => {
      const value = given[name];
      if (value === undefined) throw new Error(`the message ${key} was given no ${place}`);
      return typeof value === "number" ? number(value) : apart(value);
    });
  };
  return {
    language,
    direction,
    // `Given` has made sure of the values at every call.
    say: say as Speaker<English>["say"],
    number,
    amount: (decimal) => amountIn(locale, decimal, true),
    digits: (decimal) => amountIn(locale, decimal, false),
    shown: (reading) => apart(reading.replace(DECIMAL_POINT, `$1${point}`)),
    apart,
    list: (items) => items.join(direction === "rtl" ? "؛ " : "; "),
    percent: (share) =>
      new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 0 }).format(share),
    day: (iso) =>
      new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC", calendar: "gregory" }).format(
        new Date(`${iso}T00:00:00Z`),
      ),
  };
}

function formOf(
  forms: Readonly<Record<string, string>>,
  plural: Intl.PluralRules,
  count: string | number | undefined,
): string {
  const form = typeof count === "number" ? forms[pluralForm(plural, count)] : undefined;
  const text = form ?? forms.other;
  if (text === undefined) throw new Error("a message with forms has none for the rest");
  return text;
}

function decimalSign(locale: string): string {
  return (
    new Intl.NumberFormat(locale).formatToParts(1.5).find(({ type }) => type === "decimal")?.value ?? "."
  );
}

/** Whole and fraction are formatted as integers, so that no binary fraction comes near money. */
function amountIn(locale: string, decimal: string, useGrouping: boolean): string {
  const [, sign = "", whole = "0", fraction = ""] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(decimal) ?? [];
  const plain = new Intl.NumberFormat(locale, { useGrouping });
  const digit = new Intl.NumberFormat(locale, { useGrouping: false });
  const point = decimalSign(locale);
  const minus = plain.formatToParts(-1).find(({ type }) => type === "minusSign")?.value ?? "-";
  const behind = [...fraction].map((one) => digit.format(Number(one))).join("");
  return `${sign === "" ? "" : minus}${plain.format(BigInt(whole))}${behind === "" ? "" : point + behind}`;
}
