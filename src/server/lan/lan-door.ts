/** Who may come in from another machine: whoever has shown the access code once, by a cookie from then on. */
import { timingSafeEqual } from "node:crypto";
import type { Context, Hono } from "hono";
import { getCookie, setCookie } from "hono/cookie";
import { said } from "../../messages/said.ts";
import { problem } from "../answers.ts";

export interface LanDoor {
  /** what this machine is called by on the network, without the port */
  readonly hosts: ReadonlySet<string>;
  readonly code: string;
  /** DER */
  readonly authority: Uint8Array;
}

const COOKIE = "faultwright-code";
const YEAR_SECONDS = 31_536_000;
/** Open to whoever has no code yet; a browser asks for the last two without its cookies. */
const FREE_PATHS = new Set(["/enter", "/certificate", "/manifest.webmanifest", "/icon.svg"]);

/** Why a request from another machine is refused; null where it may pass. */
export function refusedAtDoor(context: Context, door: LanDoor): string | null {
  if (FREE_PATHS.has(context.req.path)) return null;
  if (isCode(getCookie(context, COOKIE), door)) return null;
  return said`this bench wants its access code: open the address that it printed when it was started`;
}

function isCode(given: string | undefined, { code }: LanDoor): boolean {
  const [shown, right] = [Buffer.from(given ?? ""), Buffer.from(code)];
  return shown.length === right.length && timingSafeEqual(shown, right);
}

/** `/enter?code=` lets a browser in, `/certificate` gives it the authority to trust. */
export function addDoor(app: Hono, door: LanDoor): void {
  app.get("/enter", (context) => {
    if (!isCode(context.req.query("code"), door))
      return problem(context, said`this is not the access code of this bench`, 403);
    setCookie(context, COOKIE, door.code, {
      httpOnly: true,
      // not Strict: a link that is tapped in another program leads here, too; writes are held to their origin by the guard
      sameSite: "Lax",
      path: "/",
      maxAge: YEAR_SECONDS,
    });
    return context.redirect("/");
  });
  app.get("/certificate", (context) =>
    context.body(new Uint8Array(door.authority), 200, {
      "Content-Type": "application/x-x509-ca-cert",
      "Content-Disposition": 'attachment; filename="faultwright-bench.crt"',
      "Cache-Control": "no-store",
    }),
  );
}
