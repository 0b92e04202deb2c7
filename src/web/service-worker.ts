/**
 * Keeps the built page and its engine in the browser, where the browser allows it (https or this machine): the bench then opens without the
 * bench computer. Answers of the server are not kept here; jobs and what waits to be sent are in the page's own store.
 */

// The worker's global, as this file needs it: the types of the page's own global stand in the way.
const worker = globalThis as unknown as {
  readonly location: Location;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(name: "install" | "activate", hear: (event: ExtendableEvent) => void): void;
  addEventListener(name: "fetch", hear: (event: FetchEvent) => void): void;
};

/** Put in by the build (`vite.config.ts`): every file of the page, and a mark that changes with any of them. */
declare const PAGE_FILES: readonly string[];
declare const PAGE_MARK: string;

const CACHE = `page-${PAGE_MARK}`;
/** The page itself comes fresh where the bench computer answers within this. */
const PATIENCE_MS = 2_500;

worker.addEventListener("install", (event) => {
  const fill = async () => {
    const cache = await caches.open(CACHE);
    await cache.addAll(PAGE_FILES.map((file) => new Request(file, { cache: "reload" })));
    await worker.skipWaiting();
  };
  event.waitUntil(fill());
});

worker.addEventListener("activate", (event) => {
  const tidy = async () => {
    const old = (await caches.keys()).filter((name) => name !== CACHE);
    await Promise.all(old.map((name) => caches.delete(name)));
    await worker.clients.claim();
  };
  event.waitUntil(tidy());
});

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== worker.location.origin) return;
  if (url.pathname.startsWith("/api/")) return;
  event.respondWith(request.mode === "navigate" ? freshPage(request) : keptFile(request));
});

async function keptFile(request: Request): Promise<Response> {
  const kept = await caches.match(request, { ignoreSearch: true });
  if (kept !== undefined) return kept;
  const fresh = await fetch(request);
  if (fresh.ok && new URL(request.url).pathname.endsWith(".ttf"))
    await (await caches.open(CACHE)).put(request, fresh.clone());
  return fresh;
}

async function freshPage(request: Request): Promise<Response> {
  try {
    return await fetch(request, { signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch (problem) {
    const kept = await caches.match("/");
    if (kept === undefined) throw problem;
    return kept;
  }
}
