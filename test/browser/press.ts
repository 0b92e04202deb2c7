/** Pressing what stands on the page: by touch, or by the keyboard alone. */
import type { Locator } from "playwright-core";

export type Press = (target: Locator) => Promise<void>;

export const clicked: Press = (target) => target.click();

/** With a thumb; the page's context has touch. */
export const tapped: Press = (target) => target.tap();

/** More Tab stops than any screen has. */
const MOST_STOPS = 250;

/** Tab until it has the focus (arrows within a group of radios or tabs), then Space or Enter: what a person without a pointer does. */
export const byKeys: Press = async (target) => {
  const keyboard = target.page().keyboard;
  await target.waitFor();
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    const focus = await target.evaluate((wanted) => {
      const at = document.activeElement;
      if (at === wanted && wanted.matches("input:not([type=radio], [type=checkbox])")) return null;
      if (at === wanted) return wanted.matches("input") ? "Space" : "Enter";
      const radios = at?.matches("input[type=radio]") === true && wanted.matches("input[type=radio]");
      if (radios && (at as HTMLInputElement).name === (wanted as HTMLInputElement).name) return "ArrowDown";
      const tabs = at?.getAttribute("role") === "tab" && at.parentElement === wanted.parentElement;
      return tabs ? "ArrowRight" : "Tab";
    });
    // a field only wants the cursor
    if (focus === null) return;
    await keyboard.press(focus);
    if (focus === "Space" || focus === "Enter") return;
  }
  throw new Error(`Tab does not reach ${target}`);
};
