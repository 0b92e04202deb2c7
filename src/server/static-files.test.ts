import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filePath } from "./static-files.ts";

describe("the path of a file of the page", () => {
  it("stays inside the folder, whatever is asked for", () => {
    const step = fc.constantFrom("..", "%2e%2e", "%2f", "/", "\\", "%5c", ".", "a", "%00", "%", "etc", "//");
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const path = filePath("/web/root", `/${steps.join("")}`);
        expect(path === null || (path.startsWith("/web/root/") && !path.split("/").includes(".."))).toBe(
          true,
        );
      }),
      { seed: 4517, numRuns: 500 },
    );
  });

  it("is the file that is named, and the page for a folder", () => {
    expect(filePath("/web/root", "/assets/a%20b.js")).toBe("/web/root/assets/a b.js");
    expect(filePath("/web/root", "/")).toBe("/web/root/index.html");
  });
});
