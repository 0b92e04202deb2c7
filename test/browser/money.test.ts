/**
 * The job's money on the page: from the shop's terms to the quote that is accepted, the bill, and the board that comes back; and the papers
 * of a job in every language.
 */

import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseBoard } from "../../src/board/parse-board.ts";
import { storesOfCharge } from "../../src/board/stores-of-charge.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { CLOSED_JOB } from "../../src/papers/closed-job.fixture.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { answerCard, cardReady, inspect, takeIn, touchProblems } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

const JOB_MS = 600_000;

const DRAWER = `name,kind,volts,amps,hotAmps,shortCircuitSeconds,copack,count,place,price,used,donor
K40T60,igbt,600V,20A,20A,10us,yes,1,drawer 4,2.60,,
K40T60,igbt,600V,20A,20A,10us,yes,2,shelf,1.00,yes,heat pump board 12
P30,igbt,500V,30A,,,yes,4,drawer 5,1.90,,
`;

/** A dead drive taken in, its stores proven empty. */
async function dischargedJob(id: string): Promise<void> {
  const shipped = SHIPPED.find((one) => /Greenhouse/i.test(one.title));
  if (shipped === undefined) throw new Error("the demo board does not come with the program");
  const board = parseBoard(shipped.board);
  if (!board.ok) throw new Error(board.problem);
  const proofs = storesOfCharge(board.value).map(({ part, pins: [plus, minus] }, at) => {
    const places = { red: `${part}.${plus}`, black: `${part}.${minus}` };
    return { do: "measure", id: `proof-${at}`, mode: "dcv", ...places, reading: 0.2 } as const;
  });
  await served.store.createJob({
    id,
    title: "fan drive off bay 3",
    practice: null,
    header: { format: "faultwright-job/1", board: shipped.board, cause: "surge", symptom: "dead" },
    events: proofs,
  });
}
const WIDTHS = [390, 820, 1366];

describe("the job's money", () => {
  it(
    "goes from the shop's terms through the quote to the bill; a board that comes back is linked and costs the customer nothing",
    async () => {
      const page = await served.phone();
      const atEveryWidth = async (name: string) => {
        for (const width of WIDTHS) {
          await page.setViewportSize({ width, height: width === 390 ? 844 : 1000 });
          await inspect(page, `money-${name}-${width}`);
        }
        await page.setViewportSize({ width: 390, height: 844 });
      };
      await page.goto(served.url);
      await page.getByRole("button", { name: "The shop's terms" }).click();
      await page.getByLabel("Name and address, for the head of papers").fill("The bench by the harbour");
      await page.getByLabel("Tax, %").fill("20");
      await page.getByLabel("Rate an hour").fill("48");
      await page.getByLabel("Mark-up on parts, %").fill("a lot");
      await page.getByText("Mark-up on parts, %: type an amount").waitFor();
      await page.getByLabel("Mark-up on parts, %").fill("25");
      await page.getByText("Kept, for every page and the terminal.").waitFor();
      expect(await served.store.readShop()).toMatchObject({
        name: "The bench by the harbour",
        terms: { taxRate: 0.2, ratePerHour: 48, partsMarkUp: 0.25 },
      });
      await atEveryWidth("shop");
      await page.goto(`${served.url}#/new`);
      const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });

      await answerCard(page, await cardReady(page));
      await cardReady(page);
      await page.locator(".money-fold > summary").click();
      await page.getByRole("img", { name: /giving up is better from/ }).waitFor();
      await page.getByRole("region", { name: "Given up now" }).getByText("diagnosis fee").waitFor();
      await page.locator(".money-fold").scrollIntoViewIfNeeded();
      await atEveryWidth("fold");

      await page.getByRole("button", { name: "Quote", exact: true }).click();
      await page.getByRole("radio", { name: /Repair this board/ }).check();
      await page.getByLabel(/^Price/).fill("120");
      await page.getByLabel(/Not above this/).fill("90");
      await page.getByText("The cap is below the price").waitFor();
      await page.getByLabel(/Not above this/).fill("150,50");
      await atEveryWidth("quote");
      await page.getByRole("button", { name: "Customer accepts" }).click();
      await page.getByText("The bench counts with this price from now on.").waitFor();
      await page.getByRole("button", { name: "Back to the bench" }).click();
      await cardReady(page);

      await page.goto(`${served.url}#/job/${id}/papers/bill`);
      await page.getByRole("heading", { name: "Bill so far" }).waitFor();
      const paid = page.locator(".sheet-table tr").last().locator("td").last();
      // 120 is the price accepted, and a fifth of it the tax
      expect(await paid.textContent()).toBe("144.00");
      await page.getByText("The bench by the harbour").waitFor();
      await atEveryWidth("bill");
      await page.emulateMedia({ media: "print" });
      expect(await page.getByRole("button", { name: "Print" }).isVisible()).toBe(false);
      await page.emulateMedia({ media: "screen" });

      await page.goto(`${served.url}#/job/${id}`);
      await cardReady(page);
      await page.getByRole("tab", { name: "Close" }).click();
      await page.getByRole("button", { name: "Repaired", exact: true }).click();
      await answerCard(page, await cardReady(page));
      await page.getByText("It came back", { exact: true }).click();
      await inspect(page, "money-closed-390");
      await page.getByRole("button", { name: "A fault that was missed" }).click();
      await page.waitForURL((url) => url.hash !== `#/job/${id}` && url.hash.startsWith("#/job/"));
      await cardReady(page);
      const back = new URL(page.url()).hash.replace("#/job/", "");
      expect((await served.store.readJob(back))?.header.comebackOf).toEqual({
        job: id,
        reason: "missed-fault",
      });
      await page.goto(`${served.url}#/job/${back}/papers/bill`);
      await page.getByText("nothing is charged").waitFor();
      expect(await paid.textContent()).toBe("0.00");
      const quote = (await served.store.readJob(id))?.events.find((event) => event.do === "quote");
      expect(quote).toMatchObject({ offer: "repair", price: 120, cap: 150.5, answer: "accepted" });
      await page.context().close();
    },
    JOB_MS,
  );

  it(
    "a part out of the drawer is read before it goes in, leaves the drawer, and is held against that on the board",
    async () => {
      const page = await served.phone();
      await page.goto(served.url);
      await page.evaluate(async (body) => {
        const headers = { "content-type": "text/csv" };
        await fetch("/api/stock/import", { method: "POST", headers, body });
      }, DRAWER);
      await dischargedJob("drawer-job");
      await page.goto(`${served.url}#/job/drawer-job`);
      await cardReady(page);
      await page.getByRole("tab", { name: "Enter" }).click();
      await page.getByLabel("Part", { exact: true }).fill("Q1");
      await page.getByRole("button", { name: "Replace", exact: true }).click();
      const drawer = page.getByRole("region", { name: "In the drawer" });
      await drawer.waitFor();
      // of 500 V where 600 V stand: not offered
      expect(await drawer.getByRole("button").allTextContents()).toEqual([
        expect.stringContaining("1 in all, drawer 4"),
        expect.stringContaining("2 in all, shelf, pulled"),
      ]);
      await page.locator(".which-part > summary").click();
      // the one of 500 V stands beside the rest with the figure that bars it
      const beside = page.getByRole("region", { name: "Side by side" });
      await beside.getByRole("columnheader", { name: /K40T60/ }).waitFor();
      await beside.getByRole("cell", { name: /500 V.*No/ }).waitFor();
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: width === 390 ? 844 : 1000 });
        await beside.scrollIntoViewIfNeeded();
        await inspect(page, `money-side-by-side-${width}`);
      }
      await page.setViewportSize({ width: 390, height: 844 });
      await page.getByRole("region", { name: "Compare one" }).getByRole("button", { name: "K40T60" }).click();
      await page.getByText(/The candidate:/).waitFor();
      expect(await page.getByLabel("voltage, candidate").inputValue()).toBe("600 V");
      await page.locator(".which-part > summary").click();
      await drawer.getByRole("button", { name: /shelf, pulled/ }).click();
      // of a pulled part it stands open by itself
      await page.getByText("A pulled part is bad far oftener than a new one").waitFor();
      await page.getByLabel("diode mode, red on e, black on c").fill("0,46");
      await page.getByLabel("diode mode, red on g, black on e").fill("0.3");
      await page.getByText("Not what a good one shows").waitFor();
      await page.getByLabel("diode mode, red on g, black on e").fill("OL");
      await page.getByText("2 of 6 read").waitFor();
      await page.locator(".mounting > summary").click();
      await page.getByText("solder now, so that no lead carries the pull of a screw").waitFor();
      await page.getByText(/^Distances: lead ends at most/).waitFor();
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: width === 390 ? 844 : 1000 });
        await inspect(page, `money-incoming-${width}`);
      }
      await page.setViewportSize({ width: 390, height: 844 });
      await page.getByRole("button", { name: "Done", exact: true }).click();
      await cardReady(page);
      const kept = (await served.store.readJob("drawer-job"))?.events.slice(-4);
      expect(kept).toEqual([
        expect.objectContaining({ do: "incoming", part: "Q1", red: "e", black: "c", reading: 0.46 }),
        expect.objectContaining({ do: "incoming", part: "Q1", red: "g", black: "e", reading: "OL" }),
        expect.objectContaining({ do: "overrule" }),
        expect.objectContaining({
          do: "replace",
          with: "K40T60",
          used: true,
          price: 1,
          from: { place: "shelf", donor: "heat pump board 12" },
        }),
      ]);
      const counts = (await served.store.readStock()).lines().map(({ count }) => count);
      expect(counts).toEqual([1, 1, 4]);
      await page.getByRole("tab", { name: "Enter" }).click();
      const [phase, bus] = ["U", "PBUS"];
      await page.getByLabel("Red on").fill(phase);
      await page.getByLabel("Black on").fill(bus);
      await page.getByRole("button", { name: "Put it on the card" }).click();
      await page.getByText("read 0.460 V here").waitFor();
      await page.getByRole("button", { name: /^Zero/ }).click();
      await cardReady(page);
      await page
        .getByText(/a short where there was none before it went in/)
        .first()
        .waitFor();
      await inspect(page, "money-recheck-390");
      await page.context().close();
    },
    JOB_MS,
  );
});

/** A word that stands on each paper in each language and on no other language's. */
const TITLES: Readonly<Record<string, readonly [string, string, string, string]>> = {
  report: ["Repair report", "Informe de reparación", "मरम्मत रिपोर्ट", "تقرير الإصلاح"],
  slip: ["Slip for the fitter", "Hoja para el montador", "फिटर के लिए पर्ची", "ورقة للمركب"],
  sheet: ["Bench sheet", "Hoja de banco", "बेंच शीट", "ورقة القياس"],
};

describe("the papers of a job", () => {
  it(
    "are shown in every language without overflow, copied, and saved as PDF",
    async () => {
      const { log, ...header } = CLOSED_JOB;
      const events = log.map((event, at) => ({ ...event, id: `e${at}` }));
      // A job file's content, as a test hands it to a store that never judges it.
      await served.store.createJob({
        id: "paper",
        title: "Greenhouse 17",
        header,
        events,
        practice: null,
      } as never);
      const page = await served.phone();
      await page.goto(`${served.url}#/job/paper/papers/report`);
      for (const [at, { language, direction }] of LANGUAGES.entries())
        for (const [kind, titles] of Object.entries(TITLES)) {
          await page.getByRole("combobox", { name: "Paper" }).selectOption(kind);
          await page.getByLabel("Language").selectOption(language);
          await page.getByRole("heading", { name: titles[at] ?? "", exact: true, level: 1 }).waitFor();
          expect(await page.locator(".sheet").getAttribute("dir")).toBe(direction);
          for (const width of [390, 1366]) {
            await page.setViewportSize({ width, height: 900 });
            if (kind === "report") await inspect(page, `paper-${kind}-${language}-${width}`);
            else expect(await touchProblems(page), `${kind} ${language} ${width}`).toEqual([]);
          }
        }
      await page.getByLabel("For whom", { exact: true }).fill("Nursery, hall 3");
      await page.locator(".sheet").getByText("Nursery, hall 3").waitFor();
      await page.reload();
      await page.locator(".sheet").getByText("Nursery, hall 3").waitFor();
      const saved = page.waitForEvent("download");
      await page.getByRole("button", { name: "Save as PDF" }).click();
      expect((await saved).suggestedFilename()).toBe("sheet-ar.pdf");

      await page.getByLabel("Language").selectOption("en");
      await page.getByRole("combobox", { name: "Paper" }).selectOption("report");
      await page.getByLabel("Terms of warranty").fill("Ninety days on parts and work.");
      await page.getByText("Ninety days on parts and work.").last().waitFor();
      await page.getByRole("combobox", { name: "Paper" }).selectOption("label");
      await page.getByRole("img", { name: /^Scan to open the job: http.*#\/job\/paper$/ }).waitFor();
      await inspect(page, "paper-label-1366");
      await page.setViewportSize({ width: 390, height: 844 });
      await inspect(page, "paper-label-390");
      await page.getByRole("combobox", { name: "Paper" }).selectOption("message");
      await page.getByText("The board is repaired.").waitFor();
      await page.getByRole("button", { name: "Copy the text" }).click();
      await page.getByText("Copied.").waitFor();
      await inspect(page, "paper-message-390");
      await page.emulateMedia({ media: "print" });
      expect(await page.getByRole("button", { name: "Copy the text" }).isVisible()).toBe(false);
      await page.context().close();
    },
    JOB_MS,
  );
});

it(
  "what the shop's own come-backs cost is offered to be set aside, and no nothing is",
  async () => {
    const { log, ...header } = CLOSED_JOB;
    const events = log.map((event, at) => ({ ...event, id: `e${at}` }));
    // A job file's content, as a test hands it to a store that never judges it.
    await served.store.createJob({ id: "repaired", title: "", header, events, practice: null } as never);
    const page = await served.phone();
    await page.goto(`${served.url}#/shop`);
    const own = page.getByRole("region", { name: "This shop's own come-backs" });
    const offer = own.getByRole("button", { name: /^Set .* aside$/ });
    await page.getByLabel("A come-back costs").fill("30");
    await offer.waitFor();
    await page.getByLabel("A come-back costs").fill("0");
    await own.getByText(/: 0\.00 \w+ for each repair/).waitFor();
    expect(await offer.count()).toBe(0);
    await page.context().close();
  },
  JOB_MS,
);
