import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { lessonBasis } from "./scripts/lesson-basis.mjs";

const basis = lessonBasis(fileURLToPath(new URL("./src", import.meta.url)));

export default defineConfig({
  // lessons that a browser kept are read anew where the tables behind them changed
  define: { "import.meta.env.LESSON_BASIS": JSON.stringify(basis) },
  root: fileURLToPath(new URL("./src/web", import.meta.url)),
  plugins: [react()],
  // The engine's worker is a module with its own chunks, like the page.
  worker: { format: "es" },
  build: {
    outDir: fileURLToPath(new URL("./dist/web", import.meta.url)),
    emptyOutDir: true,
    chunkSizeWarningLimit: 1200,
  },
});
