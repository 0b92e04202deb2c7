/** Where to probe now, on the board's picture: the drawn one of the demo, and a photo with places pinned by tapping. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { answerCard, cardReady, inspect, takeIn } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

const TOLD = "where and when it was taken";

/** A photo as a phone makes it: larger than is kept, and with a block that tells of its taking. */
async function photo(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2600, 1700);
    const pen = canvas.getContext("2d");
    if (pen === null) throw new Error("no canvas");
    pen.fillStyle = "#2c5a3c";
    pen.fillRect(0, 0, 2600, 1700);
    pen.fillStyle = "#d8d8d8";
    for (let at = 0; at < 12; at++) pen.fillRect(120 + at * 200, 300 + (at % 3) * 400, 90, 90);
    const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: "image/jpeg" })).arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  });
  const plain = Buffer.from(base64, "base64");
  const told = Buffer.from(`Exif\0\0${TOLD}`, "latin1");
  const head = Buffer.from([0xff, 0xd8, 0xff, 0xe1, 0, told.length + 2]);
  return Buffer.concat([head, told, plain.subarray(2)]);
}

/** Taps the photo at a spot, by fractions of it. */
async function tapPhoto(page: Page, x: number, y: number): Promise<void> {
  const box = await page.locator(".board-window").boundingBox();
  if (box === null) throw new Error("no picture");
  await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
}

describe("the board's picture", () => {
  it("shows the next check on the drawing, then on a photo once its places are pinned, here and on another device", async () => {
    const page = await served.phone();
    await page.goto(served.url);
    await page.getByRole("button", { name: "New job" }).click();
    const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });
    await page
      .getByRole("img", { name: "solder side of the board: black upper middle, red upper middle" })
      .waitFor();
    await page.getByRole("img", { name: "C5 plus enlarged" }).waitFor();
    await inspect(page, "phone-card-on-the-drawing");

    await page.getByRole("tab", { name: "Board" }).click();
    const map = page.getByRole("region", { name: "From the mains to the motor" });
    await map.getByText("Not tested: 23 of 23 parts").waitFor();
    expect(
      await map
        .getByRole("listitem")
        .filter({ hasText: /^Small supply fed from DC bus/ })
        .count(),
    ).toBe(1);
    await page.getByRole("button", { name: "To red" }).click();
    await inspect(page, "phone-board-drawn");

    await page.getByText("Photos of this board").click();
    await page
      .getByLabel("Photo of the parts side")
      .setInputFiles({ name: "board.jpg", mimeType: "image/jpeg", buffer: await photo(page) });
    await page.getByRole("button", { name: "Pin places" }).waitFor();
    expect(await page.getByText(/^Drawn by us/).count()).toBe(0);

    await page.getByRole("tab", { name: "Check" }).click();
    await page.getByText(/Red is not on the picture yet: C5\.plus/).waitFor();
    await page.getByRole("button", { name: "Pin C5.plus" }).click();
    await tapPhoto(page, 0.1, 0.2);
    await page.getByText(/Pinned once/).waitFor();
    await page.getByRole("button", { name: "C5.minus", exact: true }).click();
    await tapPhoto(page, 0.9, 0.8);
    await tapPhoto(page, 0.5, 0.5);
    await page.getByText(/Pinned 2 times/).waitFor();
    await page.getByRole("button", { name: "Take the last pin of C5.minus off" }).click();
    await page.getByText(/Pinned once/).waitFor();
    await inspect(page, "phone-board-pinned");
    await page.getByRole("button", { name: "Turn", exact: true }).click();

    await page.getByRole("tab", { name: "Check" }).click();
    const turned = "parts side of the board: black lower left, red upper right";
    await page.getByRole("img", { name: turned }).waitFor();
    await inspect(page, "phone-card-on-the-photo");

    const album = (await served.store.albums.readAlbum("greenhouse fan drive, 1.5 kW"))?.album;
    expect(album?.pins.map(({ place }) => place)).toEqual(["C5.plus", "C5.minus"]);
    const [face] = album?.faces ?? [];
    expect(face).toMatchObject({ side: "top", width: 2000, height: 1308, turn: 90 });
    const kept = await served.store.albums.readPicture(face?.picture ?? "");
    expect(Buffer.from(kept?.data ?? []).includes(TOLD)).toBe(false);

    const laptop = await served.laptop();
    await laptop.emulateMedia({ colorScheme: "dark" });
    await laptop.goto(`${served.url}#/job/${id}`);
    await cardReady(laptop);
    await laptop.getByRole("img", { name: turned }).waitFor();
    await answerCard(laptop, await cardReady(laptop));
    await laptop.getByText(/Red is not on the picture yet: C6\.plus/).waitFor();
    await laptop.getByRole("tab", { name: "Board" }).click();
    await inspect(laptop, "laptop-board-photo");
  });
});

/** A job of the demo's board, its charge proven gone: the next check is a cold one. */
async function provenDead(id: string): Promise<void> {
  const board = SHIPPED.find((shipped) => shipped.id === "greenhouse-fan-drive")?.board;
  const header = { format: "faultwright-job/1", board, cause: "surge", symptom: "dead", absent: ["M1"] };
  const events = ["C5", "C6", "C15", "C1", "C7", "C2"].map((ref) => ({
    do: "measure" as const,
    id: `dead-${ref}`,
    mode: "dcv" as const,
    red: `${ref}.plus`,
    black: `${ref}.minus`,
    reading: 0.1,
  }));
  await served.store.createJob({ id, title: "plots", practice: null, header, events });
}

describe("plots", () => {
  it("show what a check would read, the reading on it, and how belief and money went, each with its figures in words", async () => {
    await provenDead("plots");
    const page = await served.laptop();
    await page.goto(`${served.url}#/job/plots`);
    await cardReady(page);
    const strip = page.getByRole("figure", { name: "What it would read" });
    await strip.getByRole("listitem").filter({ hasText: "a good board" }).waitFor();
    await page.locator("[data-digits]").first().fill("0.002");
    await page.getByRole("button", { name: "Enter", exact: true }).click();
    await page.getByText(/^The last reading on its strip: 0.002/).click();
    await page.getByText(/^The line is the reading, 0.002 V: (as with|none)/).waitFor();
    await inspect(page, "laptop-card-strip");

    await page.getByRole("tab", { name: "Log" }).click();
    await page.getByText("How the job has gone, plotted").click();
    await page.getByRole("img", { name: /^After entry \d+: \w+ \d+ %/ }).waitFor();
    await page.getByRole("img", { name: /^Spent .+still expected .+giving up is better once/ }).waitFor();
    const money = page.getByRole("figure", { name: "Money spent, still expected, and the stop line" });
    await money.getByText("As a table").click();
    expect(await money.getByRole("columnheader").allTextContents()).toEqual([
      "after",
      "spent",
      "still expected",
      "stop line",
    ]);
    await page.getByText(/entries worked out again…/).waitFor({ state: "detached" });
    expect(await money.getByRole("row").count()).toBeGreaterThan(7);
    await money.scrollIntoViewIfNeeded();
    await inspect(page, "laptop-log-plots");
  });
});
