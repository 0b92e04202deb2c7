/**
 * The walls between the layers, as rules for the import checker, and the scan for globals that a pure layer
 * must not touch. `walls.test.ts` runs both over `src/` and over planted breaches.
 */
import { cruise, type ICruiseResult, type IForbiddenRuleType, type IModule } from "dependency-cruiser";
import ts from "typescript";
import { ENGINE_DOOR, MAY_IMPORT, PURE_LAYERS } from "./layers.ts";

/** Tests, the samples they share, and suites that several of them run. */
const TEST = "\\.(test|fixture|contract)\\.tsx?$";
const PURE = `^src/(${PURE_LAYERS.join("|")})/`;
const DOOR = `^${ENGINE_DOOR.replaceAll(".", "\\.")}$`;

/** Where a program starts: imported by nobody, and allowed to be. */
const ENTRIES = [
  "^src/(cli|server)/main\\.ts$",
  "^src/web/(main\\.tsx|service-worker\\.ts)$",
  DOOR,
  "\\.d\\.ts$",
];

function anyOf(layers: readonly string[]): string {
  return `^src/(${layers.join("|")})/`;
}

/** One rule a layer. A test may also use the shipped boards, as samples. */
function layerRules(): IForbiddenRuleType[] {
  return Object.entries(MAY_IMPORT).flatMap(([layer, may]) => {
    const comment = `${layer}/ may import ${[layer, ...may].join(", ")} and nothing else (test/layers.ts). Move the code, or have the caller pass in what you need.`;
    const rule = (name: string, from: IForbiddenRuleType["from"], allowed: readonly string[]) => ({
      name,
      comment,
      severity: "error" as const,
      from,
      to: { path: "^src/", pathNot: anyOf(allowed) },
    });
    const own = [layer, ...may];
    return [
      rule(
        layer === "web" ? "engine-door" : `layer:${layer}`,
        { path: `^src/${layer}/`, pathNot: layer === "web" ? [TEST, DOOR] : [TEST] },
        own,
      ),
      rule(`tests-of:${layer}`, { path: `^src/${layer}/.*${TEST}` }, [...own, "shipped"]),
    ];
  });
}

const OTHER_RULES: IForbiddenRuleType[] = [
  {
    name: "pure",
    comment: "This layer also runs in the browser: no Node module and no npm package. Pass the result in.",
    severity: "error",
    from: { path: PURE, pathNot: TEST },
    to: { dependencyTypes: ["core", "npm", "npm-dev", "npm-optional", "npm-peer", "npm-no-pkg", "unknown"] },
  },
  {
    name: "store-only-in-main",
    comment: "Only main.ts chooses a store; everything else in server/ and cli/ is handed one.",
    severity: "error",
    from: { path: "^src/(server|cli)/", pathNot: ["/main\\.ts$", TEST] },
    to: { path: "^src/store/" },
  },
  {
    name: "door-to-engine-only",
    comment: `${ENGINE_DOOR} is the page's door to the pure layers, not to the store, the server or the terminal.`,
    severity: "error",
    from: { path: DOOR },
    to: { path: "^src/", pathNot: anyOf([...PURE_LAYERS, "web"]) },
  },
  {
    name: "not-to-test",
    comment: "The program must not need its tests.",
    severity: "error",
    from: { path: "^src/", pathNot: TEST },
    to: { path: [TEST, "^(test|bench|evaluate)/"] },
  },
  {
    name: "no-circular",
    comment: "Two files that need each other are one idea or three: merge them or move the shared part out.",
    severity: "error",
    from: { path: "^src/" },
    to: { circular: true },
  },
  {
    name: "no-orphans",
    comment: "Nothing imports this file and it imports nothing: delete it or use it.",
    severity: "error",
    from: { path: "^src/", orphan: true, pathNot: [...ENTRIES, TEST] },
    to: {},
  },
];

/** Every wall, in the import checker's words. */
export const RULES: readonly IForbiddenRuleType[] = [...layerRules(), ...OTHER_RULES];

/** What the import checker saw: the modules under `src/`, and each breach as `rule: from → to`. */
export interface Cruise {
  readonly seen: readonly string[];
  readonly breaches: readonly { readonly rule: string; readonly text: string }[];
}

function isSource(module: IModule): boolean {
  return /^src\/.*\.tsx?$/.test(module.source) && module.couldNotResolve !== true;
}

/** Walks the imports of `root`/src, types included, and reports every breach of RULES. */
export async function cruiseTree(root: string): Promise<Cruise> {
  const { output } = await cruise(["src"], {
    baseDir: root,
    ruleSet: { forbidden: [...RULES] },
    validate: true,
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
  });
  const { modules, summary } = output as ICruiseResult;
  return {
    seen: modules.filter(isSource).map((module) => module.source),
    breaches: summary.violations.map(({ rule, from, to }) => ({
      rule: rule.name,
      text: `${rule.name}: ${from} → ${to}`,
    })),
  };
}

const BANNED_GLOBALS = new Set([
  "process",
  "performance",
  "fetch",
  "setTimeout",
  "setInterval",
  "setImmediate",
  "crypto",
  "window",
  "document",
  "localStorage",
  "indexedDB",
  "console",
]);

/** True where an identifier stands for the global itself, not for a name that some object or parameter owns. */
function isGlobalUse(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node;
  if (ts.isTypeNode(parent) || ts.isQualifiedName(parent)) return false;
  return !(
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodDeclaration(parent)
  );
}

function impurity(node: ts.Node): string | null {
  if (ts.isPropertyAccessExpression(node)) {
    const text = `${node.expression.getText()}.${node.name.text}`;
    if (text === "Math.random" || text === "Date.now") return text;
  }
  if (
    ts.isNewExpression(node) &&
    node.expression.getText() === "Date" &&
    (node.arguments?.length ?? 0) === 0
  ) {
    return "new Date()";
  }
  if (ts.isIdentifier(node) && BANNED_GLOBALS.has(node.text) && isGlobalUse(node)) return node.text;
  return null;
}

/** Clock, chance and outside world that a source text touches, each as `line: name`. */
export function impurities(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const name = impurity(node);
    if (name !== null) found.push(`${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${name}`);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}
