import { expect, test } from "vitest";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { acceptLog } from "./accept-log.ts";
import type { KeptEvent } from "./job-store.ts";

const WITH_MOTOR = { format: "faultwright-job/1", board: smallDrive(), cause: "surge", symptom: "dead" };
const HEADER = { ...WITH_MOTOR, absent: ["M1"] };
const LOG: readonly KeptEvent[] = [
  { do: "clip", at: ["C1.plus", "C1.minus"], ohms: 2200, id: "a" },
  { do: "power", feed: "mains", observed: "quiet", id: "b" },
];

test("a file that is brought may tell of power with a resistor on; an entry added now may not", () => {
  expect(acceptLog(HEADER, LOG)).toBeNull();
  expect(acceptLog(HEADER, LOG, 2)).toBeNull();
  expect(plain(acceptLog(HEADER, LOG, 1) ?? "")).toContain("log[1].do: 2200 ohm is still clipped on");
  expect(plain(acceptLog(HEADER, LOG, 0) ?? "")).toContain("unclip");
});

test("overruled first, it is kept; the same log is kept when it is sent again in one piece", () => {
  const overruled: KeptEvent[] = [
    LOG[0],
    { do: "overrule", why: "it stays", of: "resistor", id: "o" },
    LOG[1],
  ];
  expect(acceptLog(HEADER, overruled, 1)).toBeNull();
  expect(acceptLog(HEADER, overruled, 0)).toBeNull();
});

test("an entry added now may not drive a motor that nobody has read; a file that is brought may tell of it", () => {
  expect(acceptLog(WITH_MOTOR, [LOG[1]])).toBeNull();
  expect(plain(acceptLog(WITH_MOTOR, [LOG[1]], 0) ?? "")).toContain("log[0].do: M1 has not been read");
  const known: KeptEvent = { do: "overrule", why: "it runs elsewhere", of: "motor", id: "m" };
  expect(acceptLog(WITH_MOTOR, [known, LOG[1]], 0)).toBeNull();
});
