import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["src/**/*.test.{ts,tsx}", "test/**/*.test.ts", "evaluate/**/*.test.ts"],
    exclude: ["**/node_modules/**", "test/fixtures/**", "dist/**"],
    // Diagnosis and browser tests do real work on two slow processors; a hang is still cut off.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
