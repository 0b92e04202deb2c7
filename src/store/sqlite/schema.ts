import type { Clock } from "../../job/job-store.ts";
import { inTransaction, type SqlConnection } from "./connection.ts";

/**
 * The steps that lead from an empty file to the schema of today. A step that has shipped is never edited: a change is a
 * new step at the end.
 */
export const SCHEMA_STEPS: readonly string[] = [
  `
  CREATE TABLE job (
    id TEXT PRIMARY KEY,
    title TEXT NOT NULL,
    practice TEXT CHECK (practice IS NULL OR json_valid(practice)),
    board_name TEXT NOT NULL,
    header TEXT NOT NULL CHECK (json_valid(header)),
    created_at TEXT NOT NULL
  ) STRICT;

  CREATE TABLE event (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    job TEXT NOT NULL REFERENCES job(id),
    id TEXT NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body)),
    received_at TEXT NOT NULL,
    UNIQUE (job, id)
  ) STRICT;
  CREATE INDEX event_by_arrival ON event (job, arrival);

  CREATE TABLE picture (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    job TEXT NOT NULL REFERENCES job(id),
    id TEXT NOT NULL,
    type TEXT NOT NULL CHECK (type IN ('image/jpeg', 'image/png')),
    data BLOB NOT NULL,
    received_at TEXT NOT NULL,
    UNIQUE (job, id)
  ) STRICT;

  CREATE TRIGGER job_stays BEFORE UPDATE ON job
    BEGIN SELECT RAISE(ABORT, 'a job is not changed: append an event'); END;
  CREATE TRIGGER job_kept BEFORE DELETE ON job
    BEGIN SELECT RAISE(ABORT, 'a job is not deleted'); END;
  CREATE TRIGGER event_stays BEFORE UPDATE ON event
    BEGIN SELECT RAISE(ABORT, 'an event is not changed: append an undo'); END;
  CREATE TRIGGER event_kept BEFORE DELETE ON event
    BEGIN SELECT RAISE(ABORT, 'an event is not deleted: append an undo'); END;
  CREATE TRIGGER picture_stays BEFORE UPDATE ON picture
    BEGIN SELECT RAISE(ABORT, 'a picture is not changed'); END;
  CREATE TRIGGER picture_kept BEFORE DELETE ON picture
    BEGIN SELECT RAISE(ABORT, 'a picture is not deleted'); END;
  `,
  `
  CREATE TABLE board_version (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    board TEXT NOT NULL,
    id TEXT NOT NULL,
    title TEXT NOT NULL,
    content TEXT CHECK (content IS NULL OR json_valid(content)),
    outcomes TEXT NOT NULL CHECK (json_valid(outcomes)),
    received_at TEXT NOT NULL,
    UNIQUE (board, id)
  ) STRICT;
  CREATE INDEX board_version_by_arrival ON board_version (board, arrival);
  CREATE TRIGGER board_version_stays BEFORE UPDATE ON board_version
    BEGIN SELECT RAISE(ABORT, 'a version of a board is not changed: add another'); END;
  CREATE TRIGGER board_version_kept BEFORE DELETE ON board_version
    BEGIN SELECT RAISE(ABORT, 'a version of a board is not deleted: add one without content'); END;
  `,
  `
  CREATE TABLE stock_event (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    body TEXT NOT NULL CHECK (json_valid(body)),
    received_at TEXT NOT NULL
  ) STRICT;
  CREATE TRIGGER stock_event_stays BEFORE UPDATE ON stock_event
    BEGIN SELECT RAISE(ABORT, 'what happened to the stock is not changed: count again'); END;
  CREATE TRIGGER stock_event_kept BEFORE DELETE ON stock_event
    BEGIN SELECT RAISE(ABORT, 'what happened to the stock is not deleted: count again'); END;
  `,
  `
  CREATE TABLE shop (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    body TEXT NOT NULL CHECK (json_valid(body)),
    received_at TEXT NOT NULL
  ) STRICT;
  CREATE TRIGGER shop_stays BEFORE UPDATE ON shop
    BEGIN SELECT RAISE(ABORT, 'the terms of the shop are not changed: keep them anew'); END;
  CREATE TRIGGER shop_kept BEFORE DELETE ON shop
    BEGIN SELECT RAISE(ABORT, 'the terms of the shop are not deleted: keep them anew'); END;
  `,
  // Pictures by what they hold. Those from before stay where they are; the view shows both as one.
  `
  CREATE TABLE picture_content (
    hash TEXT PRIMARY KEY,
    type TEXT NOT NULL CHECK (type IN ('image/jpeg', 'image/png')),
    data BLOB NOT NULL
  ) STRICT;
  CREATE TABLE job_picture (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    job TEXT NOT NULL REFERENCES job(id),
    id TEXT NOT NULL,
    hash TEXT NOT NULL REFERENCES picture_content(hash),
    received_at TEXT NOT NULL,
    UNIQUE (job, id)
  ) STRICT;
  CREATE VIEW picture_of_job AS
    SELECT job, id, type, data, received_at, 0 AS later, arrival FROM picture
    UNION ALL
    SELECT job, id, type, data, received_at, 1 AS later, arrival FROM job_picture JOIN picture_content USING (hash);
  CREATE TABLE board_picture (
    id TEXT PRIMARY KEY,
    hash TEXT NOT NULL REFERENCES picture_content(hash),
    received_at TEXT NOT NULL
  ) STRICT;
  CREATE TABLE board_album (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    board TEXT NOT NULL,
    id TEXT NOT NULL,
    album TEXT NOT NULL CHECK (json_valid(album)),
    received_at TEXT NOT NULL,
    UNIQUE (board, id)
  ) STRICT;
  ${["picture_content", "job_picture", "board_picture", "board_album"]
    .map(
      (table) => `
  CREATE TRIGGER ${table}_stays BEFORE UPDATE ON ${table}
    BEGIN SELECT RAISE(ABORT, 'a picture is not changed: add another'); END;
  CREATE TRIGGER ${table}_kept BEFORE DELETE ON ${table}
    BEGIN SELECT RAISE(ABORT, 'a picture is not deleted'); END;`,
    )
    .join("")}
  `,
];

/**
 * Brings the file to the schema of today: each missing step in a transaction of its own. Throws where the file was made
 * by a newer program, because writing to it could spoil what that one relies on.
 */
export function migrate(
  connection: SqlConnection,
  clock: Clock,
  steps: readonly string[] = SCHEMA_STEPS,
): void {
  connection.exec(
    "CREATE TABLE IF NOT EXISTS schema_step (step INTEGER PRIMARY KEY, applied_at TEXT NOT NULL) STRICT",
  );
  for (;;) {
    const finished = inTransaction(connection, () => {
      // Read inside the lock: a second process starting now must not apply the same step again.
      const done = Number(connection.all("SELECT count(*) AS done FROM schema_step", [])[0]?.done ?? 0);
      if (done > steps.length) {
        throw new Error(
          `the data was written by a newer Faultwright (schema step ${done}, this one knows ${steps.length}): update this one, or choose another data folder`,
        );
      }
      const step = steps[done];
      if (step === undefined) return true;
      connection.exec(step);
      connection.run("INSERT INTO schema_step (step, applied_at) VALUES (?, ?)", [done + 1, clock()]);
      return false;
    });
    if (finished) return;
  }
}
