/**
 * The plural form for a count. Some languages say none (and halves) in the form of one, as Hindi does; a saying for one may say it by a
 * word, so here that form is for one alone.
 * @param rules - of the reader's language
 */
export function pluralForm(rules: Intl.PluralRules, count: number): Intl.LDMLPluralRule {
  const form = rules.select(count);
  return form === "one" && count !== 1 ? "other" : form;
}
