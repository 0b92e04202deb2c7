/** Makes the page one that opens without the bench computer, where the browser allows it. */
import { boardFile, boardList } from "./board-keeper.ts";

/** Over plain http from another machine the browser offers no such thing: the open page then goes on working, and a new one does not open. */
export function keepPageHere(): void {
  if (!("serviceWorker" in navigator)) return;
  addEventListener("load", () => {
    navigator.serviceWorker.register("/service-worker.js").then(
      () => void keepBoards(),
      () => undefined,
    );
  });
}

/** A new job can be begun without the bench computer, too: on any board that it knew. */
async function keepBoards(): Promise<void> {
  try {
    const { boards } = await boardList();
    for (const { id } of boards) await boardFile(id);
  } catch {
    // What could not be kept now is kept the next time the page is opened.
  }
}
