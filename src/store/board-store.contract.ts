/** What `job/board-store.ts` promises, asked of every store alike. */
import { describe, expect, it } from "vitest";
import type { BoardStore, NewBoardVersion } from "../job/board-store.ts";
import type { Clock } from "../job/job-store.ts";

const version = (id: string, changes: Partial<NewBoardVersion> = {}): NewBoardVersion => ({
  id,
  title: "pump drive",
  content: {
    name: "pump drive",
    parts: { R1: { kind: "resistor" }, R2: { kind: "resistor", assumed: true } },
  },
  outcomes: { elsewhere: { jobs: 2 } },
  ...changes,
});

export function boardStoreContract(
  name: string,
  make: (clock: Clock) => { readonly boards: BoardStore; close(): Promise<void> },
): void {
  describe(`${name} and boards of one's own`, () => {
    let seconds = 0;
    const open = () => make(() => new Date(1000 * seconds++).toISOString());

    it("keeps every version of a board, and says of the latest what a list needs", async () => {
      const store = open();
      const boards = store.boards;
      await boards.keepVersion("b1", version("v1"));
      await boards.keepVersion("b1", version("v2", { title: "pump drive, 2.2 kW" }));
      expect((await boards.readBoard("b1"))?.versions.map(({ id, title }) => [id, title])).toEqual([
        ["v1", "pump drive"],
        ["v2", "pump drive, 2.2 kW"],
      ]);
      expect((await boards.readBoard("b1"))?.versions.at(-1)).toMatchObject(
        version("v2", { title: "pump drive, 2.2 kW" }),
      );
      expect(await boards.listBoards()).toMatchObject([
        { id: "b1", title: "pump drive, 2.2 kW", versions: 2, parts: 2, assumed: 1, deleted: false },
      ]);
      expect(await boards.readBoard("none")).toBeNull();
      await store.close();
    });

    it("adds a version once, however often it is sent, and refuses another under its id", async () => {
      const { boards, close } = bound(open());
      expect(await boards.keepVersion("b1", version("v1"))).toEqual({ ok: true, added: 1, length: 1 });
      expect(await boards.keepVersion("b1", version("v1"))).toEqual({ ok: true, added: 0, length: 1 });
      expect(await boards.keepVersion("b1", version("v1", { title: "other" }))).toMatchObject({
        ok: false,
        kind: "conflict",
      });
      expect(await boards.keepVersion("b2", version("v1", { title: "other" }))).toMatchObject({ ok: true });
      await close();
    });

    it("deletes by a version without content, which the next brings back", async () => {
      const { boards, close } = bound(open());
      await boards.keepVersion("b1", version("v1"));
      await boards.keepVersion("b2", version("v1"));
      await boards.keepVersion("b1", version("v2", { content: null }));
      const listed = async () =>
        (await boards.listBoards()).map(({ id, deleted, parts }) => [id, deleted, parts]);
      expect(await listed()).toEqual([
        ["b1", true, 2],
        ["b2", false, 2],
      ]);
      await boards.keepVersion("b1", version("v3"));
      expect((await listed())[0]).toEqual(["b1", false, 2]);
      await close();
    });
  });
}

const bound = (store: { readonly boards: BoardStore; close(): Promise<void> }) => ({
  boards: store.boards,
  close: () => store.close(),
});
