/** Holds the sayings of other languages against what the sources say: none missing, none stale, the same values filled in. */
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { ROOT } from "./setup.mjs";

/** Tags whose template is a sentence to be told. */
const TAGS = new Set(["said", "say", "sayWith"]);
const FOREIGN = ["es", "hi", "ar"];

/** @typedef {{ english: string, one: string | null, path: string }} Sentence */

/** @param {string} path @param {string} text @returns {Sentence[]} the sentences of one source */
export function sentencesIn(path, text) {
  if (!/\b(said|say|sayWith)`|\bsaidCount\(/.test(text)) return [];
  /** @type {Sentence[]} */
  const found = [];
  const kind = path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, false, kind);
  const visit = (/** @type {ts.Node} */ node) => {
    if (ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) && TAGS.has(node.tag.text)) {
      const { template } = node;
      const english = ts.isNoSubstitutionTemplateLiteral(template)
        ? template.text
        : template.head.text +
          template.templateSpans.map((span, at) => `{${at}}${span.literal.text}`).join("");
      found.push({ english, one: null, path });
    }
    if (
      ts.isCallExpression(node) &&
      ts.isIdentifier(node.expression) &&
      node.expression.text === "saidCount"
    ) {
      const [, one, other] = node.arguments;
      if (!one || !other || !ts.isStringLiteralLike(one) || !ts.isStringLiteralLike(other))
        throw new Error(`${path}: saidCount(...) wants its two sentences as plain texts`);
      found.push({ english: other.text, one: one.text, path });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** @returns {Sentence[]} the sentences of every source under src/ but the tests */
export function allSentences() {
  return readdirSync(join(ROOT, "src"), { withFileTypes: true, recursive: true })
    .filter(({ name }) => /\.tsx?$/.test(name) && !/\.(test|fixture)\.ts$/.test(name))
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .filter((path) => !path.endsWith(join("messages", "said.ts")))
    .flatMap((path) => sentencesIn(relative(ROOT, path), readFileSync(path, "utf8")));
}

const placesOf = (/** @type {string} */ text) => [...new Set(text.match(/\{\d\}/g) ?? [])].sort().join("");

/** Forms that are said of one count alone (`pluralForm`): they may say it by a word. */
const ALONE = new Set(["zero", "one", "two"]);
/** Forms that a language can do without beside a figure: in Spanish that of round millions, in Arabic that of none. */
const SELDOM = new Set(["es many", "ar zero"]);

/**
 * What is wrong with a sentence that counts: a form of the language's plural too few or too many, or other values in one of them.
 * @param {string} english
 * @param {import("../src/messages/said.ts").CountedSaying} saying
 * @param {string} language
 * @returns {string[]}
 */
function amissInForms(english, { en, ...forms }, language) {
  const wanted = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
  const given = Object.keys(forms);
  const missing = wanted.filter((form) => !given.includes(form) && !SELDOM.has(`${language} ${form}`));
  const foreign = given.filter((form) => !wanted.some((known) => known === form));
  const bare = (/** @type {string} */ text) => placesOf(text).replace("{0}", "");
  const sameValues = (/** @type {string} */ form, /** @type {string} */ text) => {
    const alone = ALONE.has(form);
    // what is said of one alone may leave a value out that many have: a single reading has no spread
    const sources = alone ? [en, english] : [english];
    const counted = alone || placesOf(text).includes("{0}");
    return counted && sources.some((source) => bare(text) === bare(source));
  };
  return [
    ...missing.map((form) => `no form for "${form}": ${JSON.stringify(english)}`),
    ...foreign.map((form) => `no such form as "${form}": ${JSON.stringify(english)}`),
    ...Object.entries(forms)
      .filter(([form, text]) => !sameValues(form, text))
      .map(
        ([form, text]) =>
          `not the same values for "${form}": ${JSON.stringify(english)}, ${JSON.stringify(text)}`,
      ),
  ];
}

/**
 * What is wrong with a language's sayings; empty: nothing.
 * @param {readonly Sentence[]} sentences
 * @param {Readonly<Record<string, import("../src/messages/said.ts").Saying>>} sayings
 * @param {string} language
 * @returns {string[]}
 */
export function amissIn(sentences, sayings, language) {
  /** @type {string[]} */
  const amiss = [];
  for (const { english, one, path } of new Map(sentences.map((each) => [each.english, each])).values()) {
    const saying = sayings[english];
    if (saying === undefined) {
      amiss.push(`missing: ${JSON.stringify(english)} of ${path}`);
      continue;
    }
    if (typeof saying === "string" ? one !== null : saying.en !== one)
      amiss.push(
        `stale: ${JSON.stringify(english)} of ${path} ${one === null ? "does not count" : `counts, one is ${JSON.stringify(one)}`}`,
      );
    if (typeof saying !== "string") amiss.push(...amissInForms(english, saying, language));
    else if (placesOf(saying) !== placesOf(english))
      amiss.push(`not the same values: ${JSON.stringify(english)}, ${JSON.stringify(saying)}`);
  }
  const said = new Set(sentences.map(({ english }) => english));
  for (const english of Object.keys(sayings))
    if (!said.has(english)) amiss.push(`nobody says: ${JSON.stringify(english)}`);
  return amiss;
}

/** Refuses a build whose languages do not say what the sources say. */
export async function checkSayings() {
  const { build } = await import("esbuild");
  const sentences = allSentences();
  for (const language of FOREIGN) {
    const { outputFiles } = await build({
      entryPoints: [join(ROOT, `src/messages/sayings/${language}.ts`)],
      bundle: true,
      format: "esm",
      write: false,
    });
    const url = `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString("base64")}`;
    const amiss = amissIn(sentences, (await import(url))[language.toUpperCase()], language);
    if (amiss.length > 0)
      throw new Error(
        `the sayings in ${language} are not those of the sources:\n${amiss.slice(0, 40).join("\n")}\n(${amiss.length} in all)`,
      );
  }
}
