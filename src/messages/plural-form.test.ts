import { expect, it } from "vitest";
import { pluralForm } from "./plural-form.ts";

it.each([
  ["hi", { 0: "other", 0.5: "other", 1: "one", 2: "other" }],
  ["es", { 0: "other", 1: "one", 2: "other" }],
  ["ar", { 0: "zero", 1: "one", 2: "two", 3: "few", 11: "many", 100: "other" }],
  ["en", { 0: "other", 1: "one", 2: "other" }],
] as const)("in %s the form for one is said of one alone", (language, forms) => {
  const rules = new Intl.PluralRules(language);
  for (const [count, form] of Object.entries(forms)) expect(pluralForm(rules, Number(count))).toBe(form);
});
