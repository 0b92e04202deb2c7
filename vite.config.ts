import { createHash } from "node:crypto";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { lessonBasis } from "./scripts/lesson-basis.mjs";

const basis = lessonBasis(fileURLToPath(new URL("./src", import.meta.url)));

const WORKER_FILE = "service-worker.js";
/** Of `src/web/public`, copied as they are. */
const PUBLIC_FILES = ["manifest.webmanifest", "icon.svg"];

/** Tells the service worker which files the page is made of; a file more or another content makes another worker. */
function pageFiles(): Plugin {
  return {
    name: "page-files",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const worker = bundle[WORKER_FILE];
        if (worker?.type !== "chunk") throw new Error(`the page is built without ${WORKER_FILE}`);
        const hash = createHash("sha256");
        const files = Object.values(bundle).filter(({ fileName }) => fileName !== WORKER_FILE);
        for (const file of files) hash.update(file.type === "chunk" ? file.code : file.source);
        // typefaces of other scripts are kept once a paper has used them
        const wanted = files.filter(({ fileName }) => !fileName.endsWith(".ttf"));
        const names = wanted.map(({ fileName }) => (fileName === "index.html" ? "/" : `/${fileName}`));
        const all = [...new Set(names), ...PUBLIC_FILES.map((name) => `/${name}`)].sort();
        worker.code = worker.code
          .replace("PAGE_FILES", JSON.stringify(all))
          .replace("PAGE_MARK", JSON.stringify(hash.digest("hex").slice(0, 16)));
      },
    },
  };
}

export default defineConfig({
  // lessons that a browser kept are read anew where the tables behind them changed
  define: { "import.meta.env.LESSON_BASIS": JSON.stringify(basis) },
  root: fileURLToPath(new URL("./src/web", import.meta.url)),
  plugins: [react(), pageFiles()],
  // The engine's worker is a module with its own chunks, like the page.
  worker: { format: "es" },
  build: {
    outDir: fileURLToPath(new URL("./dist/web", import.meta.url)),
    emptyOutDir: true,
    chunkSizeWarningLimit: 1200,
    rollupOptions: {
      input: {
        index: fileURLToPath(new URL("./src/web/index.html", import.meta.url)),
        "service-worker": fileURLToPath(new URL("./src/web/service-worker.ts", import.meta.url)),
      },
      // The worker keeps its name: the browser asks for it again by that to see whether it has changed.
      output: {
        entryFileNames: ({ name }) => (name === "service-worker" ? WORKER_FILE : "assets/[name]-[hash].js"),
      },
    },
  },
});
