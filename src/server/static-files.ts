/** The built page: files of one folder, with their types; a path that names no file opens the page itself. */
import { readFile } from "node:fs/promises";
import { extname, join, sep } from "node:path";
import type { Context, Handler } from "hono";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
  ".txt": "text/plain; charset=utf-8",
};

/** The bundler puts a hash of the content into the names of this folder: they never change under one name. */
const HASHED = `${sep}assets${sep}`;

export function staticFiles(root: string): Handler {
  return async (context) => {
    const path = filePath(root, context.req.path);
    if (path === null) return notFound(context);
    const content = await readOrNull(path);
    if (content !== null) {
      return answer(context, content, extname(path), path.startsWith(root + HASHED));
    }
    if (extname(path) !== "") return notFound(context);
    const page = await readOrNull(join(root, "index.html"));
    if (page === null) {
      return context.json({ error: "the page has not been built: run `npm run build`" }, 503);
    }
    return answer(context, page, ".html", false);
  };
}

/** Where a request's path leads inside `root`; null where it leads out of it. */
export function filePath(root: string, urlPath: string): string | null {
  let path: string;
  try {
    path = decodeURIComponent(urlPath);
  } catch {
    return null;
  }
  if (path.includes("\0") || path.includes("\\")) return null;
  const full = join(root, path.endsWith("/") ? `${path}index.html` : path);
  return full.startsWith(root + sep) ? full : null;
}

async function readOrNull(path: string): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    return new Uint8Array(await readFile(path));
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "";
    if (["ENOENT", "EISDIR", "ENOTDIR", "ENAMETOOLONG"].includes(code)) return null;
    throw error;
  }
}

function answer(
  context: Context,
  content: Uint8Array<ArrayBuffer>,
  extension: string,
  hashed: boolean,
): Response {
  return context.body(content, 200, {
    "Content-Type": TYPES[extension] ?? "application/octet-stream",
    "Cache-Control": hashed ? "public, max-age=31536000, immutable" : "no-cache",
  });
}

function notFound(context: Context): Response {
  return context.json({ error: `there is nothing at ${context.req.path}` }, 404);
}
