/**
 * The house rules that no other tool knows: words, lengths, names. Each rule is a path filter and a finder, so
 * that `tidy.test.ts` can run it over the tree and over a planted sample.
 */
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript";
import { ROOT } from "./source-files.ts";

export interface Rule {
  readonly name: string;
  /** What the person who broke it should do. */
  readonly advice: string;
  readonly applies: (path: string) => boolean;
  /** Each breach in one line of text. */
  readonly find: (text: string, path: string) => string[];
}

const CODE = /\.(ts|tsx|mjs)$/;
const PROSE = /\.md$/;
const LONGEST_FILE = 400;
export const LONGEST_FUNCTION = 70;

/** Not our words, because another one already means it here. */
const OTHER_WORDS: Readonly<Record<string, string>> = {
  component: "part (on a board) or view (on the page)",
  device: "part",
  node: "net",
  ticket: "job",
  teststep: "check",
};

/** Names that others chose and that we must use as they are. */
const FOREIGN_NAMES = [
  /node:[\w/]+/g,
  /node_modules/g,
  /\bNode\b/g,
  /\b(ReactNode|NodeJS)\b/g,
  /\b(en|de)codeURIComponent\b/g,
  /\bnode(?=["' ]?(\d|dist\/|scripts\/))/g,
  /\b(childNodes|parentNode|device(PixelRatio|ScaleFactor|-width)|mediaDevices|ComponentProps\w*)\b/g,
  /@hono\/node-server|@types\/node/g,
  // words of the netlist format: in the table that names them, and behind a bracket
  /(?<=\b(parts|pin): )"(components|node)"|\((components|node)(?= )/g,
];

function lineOf(text: string, index: number): number {
  return text.slice(0, index).split("\n").length;
}

function matches(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].map((match) => `${lineOf(text, match.index)}: ${match[0].trim()}`);
}

/** The single words of a text, camelCase and hyphenated names taken apart, plural taken off. */
function words(text: string): { word: string; index: number }[] {
  return [...text.matchAll(/[A-Z]?[a-z]+|[A-Z]+(?![a-z])/g)].map((match) => ({
    word: match[0].toLowerCase().replace(/s$/, ""),
    index: match.index,
  }));
}

function otherWords(text: string): string[] {
  const blank = (match: string) => " ".repeat(match.length);
  const ours = FOREIGN_NAMES.reduce((rest, name) => rest.replace(name, blank), text);
  const joined = ours.replace(/test-?step/gi, (match) => "teststep".padEnd(match.length));
  return words(joined)
    .filter(({ word }) => Object.hasOwn(OTHER_WORDS, word))
    .map(({ word, index }) => `${lineOf(text, index)}: "${word}", say ${OTHER_WORDS[word]}`);
}

function functionName(node: ts.SignatureDeclaration): string {
  if (node.name !== undefined) return node.name.getText();
  const { parent } = node;
  return ts.isVariableDeclaration(parent) || ts.isPropertyAssignment(parent)
    ? parent.name.getText()
    : "(unnamed)";
}

/** Functions longer than the limit, as `path#name` with their length in lines. */
export function longFunctions(text: string, path: string): { name: string; lines: number }[] {
  const kind = path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true, kind);
  const found: { name: string; lines: number }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) {
      const first = file.getLineAndCharacterOfPosition(node.getStart()).line;
      const lines = file.getLineAndCharacterOfPosition(node.getEnd()).line - first + 1;
      if (lines > LONGEST_FUNCTION) found.push({ name: `${path}#${functionName(node)}`, lines });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function titles(text: string): string[] {
  const prose = text.replace(/^```[\s\S]*?^```/gm, "");
  const count = prose.match(/^# /gm)?.length ?? 0;
  return count === 1 ? [] : [`${count} titles`];
}

/** Papers named in a text, and targets of relative links, that are not in this tree. */
function missingPapers(text: string, path: string): string[] {
  const named = [...text.matchAll(/(?<![\w/.*-])[\w./-]+\.md\b/g)].map((match) => match[0]);
  const links = PROSE.test(path)
    ? [...text.matchAll(/\]\((?!https?:|#)([^)#]+)/g)].map((match) => match[1] ?? "")
    : [];
  return [...named, ...links].filter(
    (paper) => !existsSync(join(ROOT, paper)) && !existsSync(join(ROOT, dirname(path), paper)),
  );
}

const isCode = (path: string) => CODE.test(path);
const isTesting = (path: string) => /^test\/|\.(test|fixture|contract)\.tsx?$/.test(path);
const isProse = (path: string) => PROSE.test(path);
const isOwnText = (path: string) => !/^test\/tidy/.test(path);
/** `test/` and `scripts/` speak of syntax trees and of Node, in those tools' words. */
const isHouseText = (path: string) => /^(src|bench|evaluate)\//.test(path) || isProse(path);

export const RULES: readonly Rule[] = [
  {
    name: "one word for one thing",
    advice: "Use the house word.",
    applies: isHouseText,
    find: otherWords,
  },
  {
    name: "no file over 400 lines",
    advice: "Find the second idea in it and give it a file.",
    applies: isCode,
    find: (text) => {
      const lines = text.trimEnd().split("\n").length;
      return lines > LONGEST_FILE ? [`${lines} lines`] : [];
    },
  },
  {
    name: "nothing left for later",
    advice: "Do it now, or leave it out.",
    applies: isOwnText,
    find: (text) => matches(text, /\b(TODO|FIXME|XXX|HACK)\b/g),
  },
  {
    name: "every test runs",
    advice: "Fix the test or delete it.",
    applies: (path) => isOwnText(path) && isCode(path),
    find: (text) => matches(text, /\b(it|test|describe)\.(only|skip|todo|skipIf|runIf|fails)\b/g),
  },
  {
    name: "no way round the type checker",
    advice: "Give the value its type.",
    applies: (path) => isOwnText(path) && isCode(path),
    // A test must be able to hand in what the types forbid; the program says in a comment above why it may.
    find: (text, path) => [
      ...matches(text, /\bas any\b|@ts-(ignore|expect-error|nocheck)/g),
      ...(isTesting(path) ? [] : matches(text, /(?<!^ *\/\/.*\n.*)\bas unknown as\b/gm)),
    ],
  },
  {
    name: "a file is named for what it is, in kebab-case",
    advice: "Name the idea in it.",
    applies: (path) => /^(src|test|bench|evaluate|scripts)\//.test(path),
    find: (_, path) => {
      const name = path.split("/").at(-1) ?? "";
      const fine =
        /^[a-z0-9]+(-[a-z0-9]+)*(\.test|\.property\.test|\.fixture|\.contract|\.d|\.module)?\.[a-z0-9]+$/.test(
          name,
        );
      return fine &&
        !/(^|-)(utils?|helpers?|common|manager|misc|index)[.-]/.test(name.replace(/^index\.html$/, ""))
        ? []
        : [name];
    },
  },
  {
    name: "diagnosis knows neither money nor minutes",
    advice: "Weigh it in planning/.",
    applies: (path) => /^src\/diagnosis\/.*\.ts$/.test(path) && !isTesting(path),
    find: (text) =>
      words(text)
        .filter(({ word }) => /^(money|price|cost|currency|minute|euro)$/.test(word))
        .map(({ word, index }) => `${lineOf(text, index)}: ${word}`),
  },
  {
    name: "a paper has one title",
    advice: "One `# ` line; the rest are `## `.",
    applies: isProse,
    find: titles,
  },
  {
    name: "a paper that is named is here",
    advice: "Name a paper of this tree, or say what it says.",
    applies: (path) => isOwnText(path) && (isCode(path) || isProse(path)),
    find: missingPapers,
  },
  {
    name: "nothing of the place where it was written",
    advice: "A reader elsewhere has no such path, host or paper.",
    applies: isOwnText,
    find: (text) =>
      matches(
        text,
        /(?<![\w.~<*-])\/(work|root|mnt)\/\w*|\bregistry\.[a-z]+\.[a-z]+|\bthe (contract|issue|brief)\b/gi,
      ),
  },
];
