/** What the browser fetches to show the front page, and what the engine's worker weighs beside it. */
import { gzipSync } from "node:zlib";
import type { servePage } from "../../test/browser/served-page.ts";

export interface Weight {
  readonly what: string;
  readonly bytes: number;
  readonly gzip: number;
}

type Served = Awaited<ReturnType<typeof servePage>>;

/** Files of the first load by kind, their sum, and the engine worker apart: it is fetched when a job or the intake is opened. */
export async function firstLoad(served: Served): Promise<readonly Weight[]> {
  const page = await served.phone();
  const weights: Weight[] = [];
  const reading: Promise<void>[] = [];
  page.on("response", (response) => {
    const { pathname } = new URL(response.url());
    if (pathname.startsWith("/api/")) return;
    const named = async () => {
      const body = await response.body();
      const what = pathname === "/" ? "index.html" : pathname.replace(/^.*\//, "");
      weights.push({ what, bytes: body.length, gzip: gzipSync(body, { level: 9 }).length });
    };
    reading.push(named());
  });
  await page.goto(served.url);
  await page.getByRole("heading", { name: "Jobs" }).waitFor();
  await page.waitForLoadState("networkidle");
  await Promise.all(reading);
  const first = [...weights];
  const worker = page.waitForResponse((response) => response.url().includes("engine-worker"));
  await page.goto(`${served.url}#/new`);
  await (await worker).finished();
  await page.getByRole("radio").first().waitFor();
  await Promise.all(reading);
  const later = weights.slice(first.length);
  await page.context().close();
  const sum = (what: string, some: readonly Weight[]): Weight => ({
    what,
    bytes: some.reduce((total, one) => total + one.bytes, 0),
    gzip: some.reduce((total, one) => total + one.gzip, 0),
  });
  return [...first, sum("the page itself", first), ...later];
}
