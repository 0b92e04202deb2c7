import { describe, expect, it } from "vitest";
import type { Paper } from "../wire/paper-api.ts";
import { paperRoutes } from "./paper-routes.ts";

const PAPER: Paper = {
  language: "ar",
  direction: "rtl",
  title: "فاتورة",
  facts: [{ name: "من", value: "The bench", line: "من: The bench" }],
  blocks: [
    {
      block: "table",
      head: ["البيان", "EUR"],
      rows: [["عمل", { decimal: "5.20", text: "٥٫٢٠" }]],
      sums: 1,
      shares: [0.7, 0.3],
    },
  ],
};

const PICTURES = {
  readPicture: async (job: string, id: string) =>
    job === "j1" && id === "front"
      ? { id, type: "image/jpeg" as const, data: Uint8Array.of(0xff, 0xd8) }
      : null,
};

const post = (body: unknown) =>
  paperRoutes(PICTURES, () => new Date(0)).request("/", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });

describe("a paper that the page sends", () => {
  it("comes back as a PDF", async () => {
    const answer = await post({ paper: PAPER, size: "letter" });
    expect([answer.status, answer.headers.get("content-type")]).toEqual([200, "application/pdf"]);
    expect((await answer.text()).slice(0, 5)).toBe("%PDF-");
  });

  it("is given the job's own pictures, and refused where one is not there", async () => {
    const block = {
      block: "pictures",
      text: "صور",
      captions: ["١"],
      across: 1,
      unreadable: "لا تعرض",
    } as const;
    const paper: Paper = { ...PAPER, blocks: [block] };
    const asked = (ids: readonly string[]) => post({ paper, size: "a4", pictures: { job: "j1", ids } });
    expect((await asked(["front"])).status).toBe(200);
    const missing = await asked(["back"]);
    expect([missing.status, await missing.json()]).toEqual([
      422,
      { error: 'paper: its job has no picture "back" here' },
    ]);
  });

  it("is refused with the field where it is none", async () => {
    const answer = await post({ paper: { ...PAPER, blocks: [{ block: "picture" }] }, size: "a4" });
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain("paper.blocks.0");
  });
});
