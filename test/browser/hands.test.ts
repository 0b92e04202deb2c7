/** Hands busy: the bench said once, a pedal, the voice, the screen, a row typed through, cautions read once, a slip taken back at once. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardReady, inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

const TEST_MS = 300_000;

/** As a phone on plain http: no wake lock. What the voice says is written down. */
async function onPlainHttp(page: Page): Promise<() => Promise<string[]>> {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, "wakeLock", { value: undefined });
    const said: string[] = [];
    Object.assign(globalThis, { said });
    const voice = { speak: ({ text }: SpeechSynthesisUtterance) => said.push(text), cancel: () => undefined };
    Object.defineProperty(globalThis, "speechSynthesis", { value: voice });
  });
  return () => page.evaluate(() => (globalThis as unknown as { said: string[] }).said);
}

/** Puts a value where the page keeps its own. */
async function keptOfItsOwn(page: Page, key: string, value: unknown): Promise<void> {
  await page.evaluate(
    ([at, what]) =>
      new Promise<void>((resolve, reject) => {
        const opened = indexedDB.open("keyval-store");
        opened.onupgradeneeded = () => opened.result.createObjectStore("keyval");
        opened.onsuccess = () => {
          const put = opened.result
            .transaction("keyval", "readwrite")
            .objectStore("keyval")
            .put(what, at as string);
          put.onsuccess = () => resolve();
          put.onerror = () => reject(put.error);
        };
        opened.onerror = () => reject(opened.error);
      }),
    [key, value],
  );
}

async function setKey(page: Page, command: RegExp, key: string): Promise<void> {
  await page.getByRole("button", { name: command }).click();
  await page.keyboard.press(key);
}

describe("hands busy", () => {
  it(
    "the bench is described once, its pedal taps, its voice tells, its screen stays on; a row is typed without a tap between, cautions are read once, a slip is undone before the engine answers",
    async () => {
      // a browser that had a list of its own, from before the shop kept it, brings it along once
      const laptop = await served.laptop();
      await laptop.goto(served.url);
      await keptOfItsOwn(laptop, "bench-equipment", ["thermometer"]);
      await laptop.goto(`${served.url}#/bench`);
      await laptop.getByRole("button", { name: "Spot thermometer", pressed: true }).waitFor();
      expect((await served.store.readShop()).equipment).toEqual(["thermometer"]);

      const page = await served.phone();
      const said = await onPlainHttp(page);
      await page.goto(`${served.url}#/bench`);
      // every screen has what another one said
      await page.getByRole("button", { name: "Spot thermometer", pressed: true }).click();
      await page.getByRole("button", { name: "Bench supply", exact: true }).click();
      await expect.poll(async () => (await served.store.readShop()).equipment).toEqual(["bench-supply"]);
      await laptop.reload();
      await laptop.getByRole("button", { name: "Bench supply", exact: true, pressed: true }).waitFor();
      expect(await laptop.getByRole("button", { name: "Spot thermometer", pressed: true }).count()).toBe(0);
      await laptop.context().close();
      await setKey(page, /^Set a key: Third large key/, "Tab");
      await page.getByText("Tab has its own work in a browser. Try another.").waitFor();
      await setKey(page, /^Set a key: Third large key/, "PageDown");
      await setKey(page, /^Set a key: Undo/, "F9");
      await page.getByText("F9 is set.").waitFor();
      expect(await said()).toEqual([]);
      await page.getByRole("checkbox", { name: "Say each step aloud" }).check();
      await page.getByText("a moving picture behind the page keeps it on").waitFor();
      for (const width of [390, 820, 1366]) {
        await page.setViewportSize({ width, height: 844 });
        await inspect(page, `hands-this-bench-${width}`);
      }
      await page.setViewportSize({ width: 390, height: 844 });

      await page.goto(`${served.url}#/new`);
      await page.getByRole("radio", { name: /Greenhouse/ }).check();
      await page.getByRole("radio", { name: "Surge" }).check();
      // letter for letter: the W of a lamp is no w
      await page.getByText("a meter; Bench supply", { exact: true }).waitFor();
      await page.getByRole("button", { name: "Start the job" }).click();
      await cardReady(page);
      const id = new URL(page.url()).hash.replace("#/job/", "");
      const kept = async () => (await served.store.readJob(id))?.events ?? [];
      expect((await served.store.readJob(id))?.header.equipment).toEqual(["bench-supply"]);
      expect((await said()).at(-1)).toMatch(/^DC volts, red on C5 pin plus/);
      expect(
        await page.locator("video.moving-picture").evaluate((video: HTMLVideoElement) => video.paused),
      ).toBe(false);

      // the cautions of the row are read once: they are in the way of the field and, confirmed, stay out of it
      await page.getByRole("button", { name: /^Understood/ }).click();
      await page.getByRole("list", { name: "Caution" }).waitFor({ state: "detached" });
      await inspect(page, "hands-cautions-confirmed");
      await page.locator("[data-digits]").click();
      const stores = Number(
        /of a row of (\d+)/.exec((await page.locator(".card-kind").textContent()) ?? "")?.[1],
      );
      expect(stores).toBeGreaterThan(3);
      for (let store = 1; store <= stores; store++) {
        await page.locator(`.card[data-entry="${store - 1}"] [data-digits]:focus`).waitFor();
        await page.keyboard.type("0.2");
        await page.keyboard.press("Enter");
        expect(await page.getByRole("list", { name: "Caution" }).count()).toBe(0);
      }
      const cold = await cardReady(page);
      expect(cold.headline).toMatch(/diode/i);

      // the pedal taps Open; it was a slip, and is taken back while the engine still works it in
      await page.keyboard.press("PageDown");
      await page.locator(".undo-strip").getByText("Open:").waitFor();
      await page.keyboard.press("F9");
      await expect.poll(async () => (await kept()).length).toBe(stores + 2);
      const [slip, undo] = (await kept()).slice(-2);
      expect(slip).toMatchObject({ do: "measure", mode: "diode", reading: "high" });
      expect(undo).toMatchObject({ do: "undo", of: slip?.id });
      expect(await cardReady(page)).toEqual(cold);
      await page.locator(".undo-strip").getByText("0.20 V:").waitFor();
      expect((await said()).at(-1)).toMatch(/diode mode/i);
      expect(await page.evaluate(() => document.activeElement?.closest(".card") !== null)).toBe(true);
      await page.context().close();
    },
    TEST_MS,
  );
});
