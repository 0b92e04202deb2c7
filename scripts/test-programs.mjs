/** The programs that the tests drive and npm cannot give: a reference simulator, a browser, a reader of PDF, and one of meters. */
import { existsSync } from "node:fs";
import { findProgram, run, SetupError } from "./setup.mjs";

const WANTED = [
  { debianPackage: "ngspice", names: ["ngspice"], for: "the solver is compared with it" },
  {
    debianPackage: "chromium",
    names: ["chromium", "chromium-browser"],
    for: "a whole practice job is worked in it",
  },
  { debianPackage: "poppler-utils", names: ["pdftotext"], for: "a printed bill is read back with it" },
  { debianPackage: "sigrok-cli", names: ["sigrok-cli"], for: "its demo meter's readings flow into a job" },
];

function missingPrograms() {
  return WANTED.filter(({ names }) => findProgram(names) === null);
}

function canUseApt() {
  return process.getuid?.() === 0 && existsSync("/etc/debian_version") && findProgram(["apt-get"]) !== null;
}

async function aptGet(...args) {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  return run("apt-get", args, { env, stdio: ["ignore", "inherit", "inherit"] });
}

/** Installs what is missing where we may (root on Debian); elsewhere says exactly what to install, and fails. */
export async function ensureTestPrograms() {
  const missing = missingPrograms();
  if (missing.length === 0) return;
  const packages = missing.map(({ debianPackage }) => debianPackage);
  if (canUseApt()) {
    process.stdout.write(`Installing ${packages.join(" and ")} with apt-get...\n`);
    const updated = await aptGet("update", "-q");
    const installed = await aptGet("install", "-y", "-q", "--no-install-recommends", ...packages);
    if (missingPrograms().length === 0) return;
    throw new SetupError(
      `apt-get could not install ${packages.join(" and ")} (update: code ${updated}, install: code ${installed}).`,
    );
  }
  const reasons = missing.map((program) => `  ${program.names[0]}: ${program.for}`);
  throw new SetupError(
    [
      "The tests need programs that are not on PATH:",
      ...reasons,
      `On Debian or Ubuntu: sudo apt-get install ${packages.join(" ")}. Elsewhere, install them and put them on PATH.`,
    ].join("\n"),
  );
}
