/** Photos and pins on the screen of a board of one's own: pinned by keys, from two screens at once, and of another revision than the job's. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardReady, inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

const BOARD = {
  format: "faultwright-board/1",
  name: "bench rail",
  family: "rail",
  supply: { kind: "dc", volts: 24, at: ["VIN", "GND"] },
  zero: "GND",
  parts: {
    F1: { kind: "fuse", pins: { "1": "VIN", "2": "V15" }, value: { amps: 1 }, stage: "input" },
    R1: { kind: "resistor", pins: { "1": "V15", "2": "GND" }, value: { ohms: 22_000 }, stage: "standby" },
  },
  rails: { V15: { net: "V15", volts: 15 } },
};

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
  const kept = await fetch(`${served.url}api/own-boards/own-rail/versions`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ id: "v1", title: BOARD.name, content: BOARD }),
  });
  expect(kept.status).toBe(201);
});

afterAll(async () => {
  await served?.close();
});

const albumNow = async () => (await served.store.albums.readAlbum(BOARD.name))?.album;

/** A plain photo, drawn in the page. */
async function photo(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(800, 600);
    const pen = canvas.getContext("2d");
    if (pen === null) throw new Error("no canvas");
    pen.fillStyle = "#2c5a3c";
    pen.fillRect(0, 0, 800, 600);
    const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: "image/jpeg" })).arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  });
  return Buffer.from(base64, "base64");
}

/** The board's screen with its photos open. */
async function openPhotos(page: Page): Promise<void> {
  await page.goto(`${served.url}#/boards/own-rail`);
  await page.locator("summary", { hasText: "Photos and pins" }).click();
}

/** By keys alone: the place, then the cross so many long steps right and down, then Enter. */
async function pinByKeys(page: Page, place: string, right: number, down: number): Promise<void> {
  await page.getByLabel("Any other place").fill(place);
  await page.getByRole("application").focus();
  for (const [key, times] of [
    [right < 0 ? "Shift+ArrowLeft" : "Shift+ArrowRight", Math.abs(right)],
    [down < 0 ? "Shift+ArrowUp" : "Shift+ArrowDown", Math.abs(down)],
  ] as const)
    for (let press = 0; press < times; press++) await page.keyboard.press(key);
  await page.keyboard.press("Enter");
}

const away = (page: Page) => page.route("**/api/**", (route) => route.abort());

describe("the photos of a board of one's own", () => {
  it("are taken, turned and pinned by keys on its own screen, with the revision that is printed there", async () => {
    const page = await served.phone();
    await openPhotos(page);
    await page.locator("summary", { hasText: "Photos of this board" }).click();
    await page
      .getByLabel("Photo of the parts side")
      .setInputFiles({ name: "board.jpg", mimeType: "image/jpeg", buffer: await photo(page) });
    await page.getByLabel("Revision printed on the photo’s board, parts side").fill("rev C");
    await page.getByLabel("Revision printed on the photo’s board, parts side").press("Enter");
    await page.getByText("Photo of a board marked rev C.").waitFor();
    await page.getByRole("button", { name: "Turn", exact: true }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Pin places" }).focus();
    await page.keyboard.press("Enter");
    await pinByKeys(page, "GND", 2, -3);
    await page.getByText(/Pinned once/).waitFor();
    // the cross stays where it is, and the keys with it: the next pad is one press away
    expect(await page.evaluate(() => document.activeElement?.getAttribute("role"))).toBe("application");
    expect(await page.locator(".board-viewer .for-readers").textContent()).toBe(
      "The cross: upper middle, 66 % from the left, 26 % from the top.",
    );
    await inspect(page, "own-board-pinned");
    await expect.poll(albumNow).toEqual({
      faces: [expect.objectContaining({ side: "top", turn: 90, revision: "rev C" })],
      // shown turned a quarter: what lies to the right there is the picture's top
      pins: [{ place: "GND", side: "top", x: 0.26, y: 0.34, revision: "rev C" }],
    });
    await page.context().close();
  });

  it("are pinned by two screens that do not reach the bench computer: nothing is lost, and one place in two spots is shown", async () => {
    const [phone, laptop] = [await served.phone(), await served.laptop()];
    for (const page of [phone, laptop]) {
      await openPhotos(page);
      await page.getByRole("button", { name: "Pin places" }).click();
      await away(page);
    }
    await pinByKeys(phone, "V15", -3, 0);
    await pinByKeys(phone, "F1.1", 1, 1);
    await pinByKeys(laptop, "V15", 4, 0);
    await pinByKeys(laptop, "R1.1", -1, 2);
    await laptop.getByText(/Pinned once/).waitFor();
    await phone.unroute("**/api/**");
    await expect.poll(async () => (await albumNow())?.pins.length, { timeout: 15_000 }).toBe(3);
    await laptop.unroute("**/api/**");
    const clash = laptop.getByRole("alert", { name: "Pinned on two screens" });
    await clash.getByText(/^V15 was pinned differently on two screens/).waitFor();
    const merged = await albumNow();
    expect(merged?.pins.map(({ place }) => place).sort()).toEqual(["F1.1", "GND", "R1.1", "V15", "V15"]);
    await inspect(laptop, "album-conflict");
    await clash.getByRole("button", { name: /^1 holds/ }).click();
    await clash.waitFor({ state: "detached" });
    await expect.poll(async () => (await albumNow())?.conflicts, { timeout: 15_000 }).toBeUndefined();
    const pins = (await albumNow())?.pins ?? [];
    expect(pins.filter(({ place }) => place === "V15")).toHaveLength(1);
    expect(pins).toHaveLength(4);
    // the phone sees what was decided once it looks again
    await phone.reload();
    await openPhotos(phone);
    await phone.getByText("photos 1, pins 4").waitFor();
    await phone.context().close();
    await laptop.context().close();
  });

  it("say so where they are of another revision than the board on the bench", async () => {
    const header = { format: "faultwright-job/1", board: BOARD, cause: "surge", symptom: "dead" };
    await served.store.createJob({ id: "other-rev", title: "other", practice: null, header, events: [] });
    const page = await served.phone();
    await page.goto(`${served.url}#/job/other-rev`);
    await cardReady(page);
    await page.getByRole("tab", { name: "Board" }).click();
    await page.getByText("Photo of a board marked rev C.").waitFor();
    await page.getByLabel("Revision printed on this board").fill("Rev. D");
    await page.getByLabel("Revision printed on this board").press("Enter");
    await page.getByText("The photo is of rev C, this board is Rev. D: parts may lie elsewhere.").waitFor();
    await inspect(page, "board-of-another-revision");
    await page.getByRole("tab", { name: "Log" }).click();
    await page.getByText(/Revision on the board: .?Rev\. D/).waitFor();
    await page.context().close();
  });

  it("stay with the board through a new name of it and of a part, and a job under the old name is told at intake", async () => {
    const page = await served.laptop();
    await page.goto(`${served.url}#/boards/own-rail`);
    await page.getByRole("button", { name: /^F1 fuse/ }).click();
    await page.getByLabel("Name on the board", { exact: true }).fill("FU7");
    await page.getByLabel("Name on the board", { exact: true }).press("Enter");
    await page.getByRole("button", { name: /^FU7 fuse/ }).waitFor();
    await page.locator("summary", { hasText: "The board’s name" }).click();
    await page.getByLabel("What to call the board").fill("GF-12-A");
    await page.getByLabel("What to call the board").press("Enter");
    await page.getByRole("heading", { name: "GF-12-A" }).waitFor();
    await page.reload();
    await page.locator("summary", { hasText: "Photos and pins" }).click();
    await page.getByText("photos 1, pins 4").waitFor();
    await expect
      .poll(async () => (await albumNow())?.pins.map(({ place }) => place).sort(), { timeout: 15_000 })
      .toEqual(["FU7.1", "GND", "R1.1", "V15"]);
    await page.goto(`${served.url}#/new`);
    await page.getByRole("radio", { name: /^GF-12-A/ }).check();
    await page.locator(".earlier-jobs li").first().waitFor();
    expect(await page.locator(".earlier-jobs li").count()).toBe(1);
    await page.context().close();
  });
});
