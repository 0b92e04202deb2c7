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

/**
 * What is wrong with a language's sayings; empty: nothing.
 * @param {readonly Sentence[]} sentences
 * @param {Readonly<Record<string, import("../src/messages/said.ts").Saying>>} sayings
 * @returns {string[]}
 */
export function amissIn(sentences, sayings) {
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
    const texts = typeof saying === "string" ? [saying] : [saying.other ?? ""];
    for (const text of texts)
      if (placesOf(text) !== placesOf(english))
        amiss.push(`not the same values: ${JSON.stringify(english)}, ${JSON.stringify(text)}`);
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
    const amiss = amissIn(sentences, (await import(url))[language.toUpperCase()]);
    if (amiss.length > 0)
      throw new Error(
        `the sayings in ${language} are not those of the sources:\n${amiss.slice(0, 40).join("\n")}\n(${amiss.length} in all)`,
      );
  }
}
