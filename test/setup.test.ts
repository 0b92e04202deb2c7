import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { countReport } from "../scripts/count-report.mjs";
import { checkNode, innerNpmEnvironment } from "../scripts/setup.mjs";
import { ROOT } from "./source-files.ts";

describe("setting up", () => {
  it.each(["20.19.0", "20.20.2", "22.0.0", "24.21.0"])("goes on with Node %s", (version) => {
    expect(() => checkNode(version)).not.toThrow();
  });

  it.each(["18.20.0", "20.18.9"])("refuses Node %s and says which would do", (version) => {
    expect(() => checkNode(version)).toThrow(`needs Node 20.19 or newer; this is ${version}`);
  });

  it("gives the inner npm the person's cache and registry, and nothing else of the outer npm", () => {
    const outer = {
      PATH: "/bin",
      npm_config_cache: "/c",
      NPM_CONFIG_REGISTRY: "https://packages.example",
      "npm_config_//packages.example/:_authToken": "t",
      npm_config_prefix: "/usr",
      npm_config_omit: "dev",
      npm_package_name: "faultwright",
      npm_lifecycle_event: "start",
      npm_execpath: "/npm-cli.js",
    };
    expect(Object.keys(innerNpmEnvironment(outer))).toEqual([
      "PATH",
      "npm_config_cache",
      "NPM_CONFIG_REGISTRY",
      "npm_config_//packages.example/:_authToken",
      "npm_execpath",
    ]);
  });
});

describe("the count at the end of `npm test`", () => {
  const file = (status: string, ...tests: string[]) => ({
    status,
    assertionResults: tests.map((outcome) => ({ status: outcome })),
  });

  it("takes a skipped test for a failure", () => {
    const testResults = [file("passed", "passed", "pending"), file("failed", "passed", "failed")];
    expect(countReport({ testResults })).toEqual({ passed: 2, failed: 2 });
  });

  it("takes a file that could not be loaded, or whose hooks failed, for a failure", () => {
    const testResults = [file("failed"), file("failed", "passed"), file("passed", "passed")];
    expect(countReport({ testResults })).toEqual({ passed: 2, failed: 2 });
  });
});

describe("npm start", () => {
  const dataDir = mkdtempSync(join(tmpdir(), "faultwright-start-"));
  afterAll(() => rmSync(dataDir, { recursive: true, force: true }));

  /** Starts it through a shell that stays, as npm does; resolves once the address is printed. */
  function startThroughShell(): Promise<{ shell: ChildProcess; url: string }> {
    const command = `"${process.execPath}" scripts/start.mjs --port 0 --data "${dataDir}"; true`;
    const shell = spawn("sh", ["-c", command], { cwd: ROOT, detached: true });
    return new Promise((resolve, reject) => {
      let printed = "";
      const read = (chunk: Buffer) => {
        printed += chunk.toString();
        const url = printed.match(/http:\/\/127\.0\.0\.1:\d+/)?.[0];
        if (url !== undefined) resolve({ shell, url });
      };
      shell.stdout.on("data", read);
      shell.stderr.on("data", read);
      shell.once("exit", () => reject(new Error(`ended early: ${printed}`)));
    });
  }

  async function answers(url: string): Promise<boolean> {
    return fetch(url).then(
      (response) => response.ok,
      () => false,
    );
  }

  it.each([
    ["the shell that npm put between is killed", (pid: number) => process.kill(pid, "SIGKILL")],
    ["the whole group is told to end", (pid: number) => process.kill(-pid, "SIGTERM")],
  ])("serves the page, and goes when %s", async (_, end) => {
    const { shell, url } = await startThroughShell();
    expect(await answers(url)).toBe(true);
    end(shell.pid ?? Number.NaN);
    await expect.poll(() => answers(url), { timeout: 5000 }).toBe(false);
  });
});
