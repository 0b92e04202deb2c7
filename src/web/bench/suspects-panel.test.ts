import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import type { BenchView } from "../../wire/bench-view.ts";
import type { PanelProps } from "./bench-props.ts";
import { SuspectsPanel } from "./suspects-panel.tsx";

const LEADING = { faults: [], words: "no fault: nothing read so far needs one", probability: 1 };
/** What the panel reads of a view where every reading is as it should be and much has not been looked at. */
const VIEW: Partial<BenchView> = {
  suspects: [],
  explanations: [LEADING],
  remainder: 0.02,
  healthyProbability: 0.01,
};

it("what the readings need is told apart from the chance that nothing at all is wrong", () => {
  const props = { view: VIEW, open: {} } as unknown as PanelProps;
  const shown = renderToStaticMarkup(createElement(SuspectsPanel, props)).replace(/<[^>]*>/g, "");
  expect(shown).toMatch(/no fault: nothing read so far needs one\D*100 %/);
  expect(shown).toContain(
    "Not looked into: 2 %. Nothing at all is wrong, what has not been looked for included: 1 %.",
  );
});
