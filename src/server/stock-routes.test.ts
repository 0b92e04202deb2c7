import { beforeEach, describe, expect, it } from "vitest";
import { MemoryJobStore } from "../store/memory/memory-job-store.ts";
import type { StockAnswer } from "../wire/stock-api.ts";
import { makeApp } from "./app.ts";

let app: ReturnType<typeof makeApp>;

beforeEach(() => {
  app = makeApp({
    store: new MemoryJobStore(() => "2026-01-01T00:00:00.000Z"),
    acceptLog: () => null,
    newId: () => "made-here",
    boards: [],
    webRoot: "",
    report: (error) => {
      throw error;
    },
  });
});

const importing = (text: string, type = "text/csv") =>
  app.request("/api/stock/import", { method: "POST", headers: { "Content-Type": type }, body: text });
const post = (path: string, body: unknown) =>
  app.request(`/api/stock/${path}`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });
const lines = async () => {
  const answer = (await (await app.request("/api/stock")).json()) as StockAnswer;
  return answer.lines.map(({ type, count, place, price }) => [type.name, count, place, price]);
};
const errorOf = async (response: Response | Promise<Response>) => {
  const answer = await response;
  return [answer.status, ((await answer.json()) as { error: string }).error];
};

const DRAWER = "name,kind,volts,count,place,price\nK40,igbt,650V,3,drawer 4,2.60\n1N4007,,,50,strip 2,0.05\n";

describe("a catalogue file sent to the server", () => {
  it("is taken in whole, told line by line, and a second time changes nothing", async () => {
    expect(await (await importing(DRAWER)).json()).toEqual({ rows: 2, new: 2, changed: 0, same: 0 });
    expect(await (await importing(DRAWER.replace(",50,", ",40,"))).json()).toEqual({
      rows: 2,
      new: 0,
      changed: 1,
      same: 1,
    });
    expect(await lines()).toEqual([
      ["K40", 3, "drawer 4", 2.6],
      ["1N4007", 40, "strip 2", 0.05],
    ]);
  });

  it("with one bad row is not taken in at all, and the row is named", async () => {
    await importing(DRAWER);
    expect(await errorOf(importing(`${DRAWER}K40,,600V,1,shelf,2\nX,,,1,,\n`))).toEqual([
      422,
      "line 4: volts: 600, but K40 was given 650 before; 1 more row is refused; nothing was imported",
    ]);
    expect(await errorOf(importing("nmae\nX\n"))).toEqual([
      422,
      'line 1: "nmae" is no column of a catalogue; did you mean "name"?; nothing was imported',
    ]);
    expect(await lines()).toHaveLength(2);
  });

  it("is refused as a plain form of another page would send it", async () => {
    expect(await errorOf(importing(DRAWER, "text/plain"))).toEqual([
      400,
      'content-type: "text/plain" is not text/csv',
    ]);
  });

  it("is given back as it was counted", async () => {
    await importing(DRAWER);
    const file = await app.request("/api/stock/file");
    expect(file.headers.get("content-disposition")).toContain("parts-drawer.csv");
    const text = await file.text();
    expect(await (await importing(text)).json()).toMatchObject({ rows: 2, same: 2 });
  });
});

describe("a line typed by hand", () => {
  const was = { name: "K40", place: "drawer 4", used: false, donor: null };

  it("is added, read by the rules of a row", async () => {
    const cells = { name: "K40", kind: "igbt", volts: "650V", count: "3", place: "drawer 4" };
    expect((await post("lines", { cells, was: null, countWas: null })).status).toBe(200);
    expect(await lines()).toEqual([["K40", 3, "drawer 4", null]]);
    expect(await errorOf(post("lines", { cells, was: null, countWas: null }))).toEqual([
      422,
      "name: K40 is in that place already; correct the line that is there",
    ]);
    const wrong = { ...cells, volts: "650A", count: "-1" };
    expect(await errorOf(post("lines", { cells: wrong, was, countWas: 3 }))).toEqual([
      422,
      'volts: "650A": expected voltage in V; count: "-1": expected a whole number of 0 or more',
    ]);
  });

  it("corrects the one it was, its ratings and its place too, as long as its count is as it was seen", async () => {
    await importing(DRAWER);
    const cells = { name: "K40", kind: "igbt", volts: "600V", count: "2", place: "shelf" };
    expect((await post("lines", { cells, was, countWas: 3 })).status).toBe(200);
    expect(await lines()).toEqual([
      ["1N4007", 50, "strip 2", 0.05],
      ["K40", 2, "shelf", null],
    ]);
    expect(await errorOf(post("lines", { cells, was: { ...was, place: "shelf" }, countWas: 3 }))).toEqual([
      422,
      "count: was 3 and is 2 by now; look at the drawer again",
    ]);
    expect(await errorOf(post("lines", { cells, was, countWas: 3 }))).toEqual([
      422,
      "K40: is no longer there; look at the drawer again",
    ]);
  });

  it("is taken off the list", async () => {
    await importing(DRAWER);
    expect((await post("gone", { was, countWas: 3 })).status).toBe(200);
    expect(await lines()).toEqual([["1N4007", 50, "strip 2", 0.05]]);
  });

  it("in a shape that is none is refused with the field's name", async () => {
    const cells = { name: "K40", kind: "igbt" };
    expect(await errorOf(post("lines", { cells, was: "K40", countWas: null }))).toEqual([
      400,
      expect.stringMatching(/^was:/),
    ]);
    expect(
      await errorOf(post("lines", { cells: { ...cells, colour: "black" }, was: null, countWas: null })),
    ).toEqual([422, expect.stringContaining('"colour" is no column of a catalogue')]);
    expect(await errorOf(post("gone", { was }))).toEqual([400, expect.stringMatching(/^countWas:/)]);
  });
});

describe("twenty thousand rows", () => {
  it("are taken in within a few seconds, and out again", async () => {
    const rows = Array.from({ length: 20_000 }, (_, at) => `part ${at},igbt,600V,1,drawer ${at % 90},1.5`);
    const text = ["name,kind,volts,count,place,price", ...rows, ""].join("\n");
    const started = Date.now();
    expect(await (await importing(text)).json()).toMatchObject({ rows: 20_000, new: 20_000 });
    expect((await lines()).length).toBe(20_000);
    expect(Date.now() - started).toBeLessThan(8000);
  });
});
