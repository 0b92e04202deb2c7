/**
 * Who may talk to the server. As long as it is not opened to the network it listens on the loopback address only, but every page open in the browser can reach that
 * too: so the name it was called by must be a loopback name (else a foreign domain pointed at 127.0.0.1 could read the
 * answers), and a write must come from our own page or from no page at all.
 */
import type { Context, MiddlewareHandler } from "hono";
import { problem } from "./answers.ts";
import { type LanDoor, refusedAtDoor } from "./lan/lan-door.ts";

const LOOPBACK_NAMES = new Set(["127.0.0.1", "localhost", "[::1]"]);
const READING = new Set(["GET", "HEAD"]);

const CONTENT_SECURITY_POLICY = [
  "default-src 'self'",
  // the kit of controls writes its sizes into style elements
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** @param door - where the bench is open to its network */
export function guard(door: LanDoor | null = null): MiddlewareHandler {
  return async (context, next) => {
    const host = hostOf(context);
    const name = host.replace(/:\d+$/, "");
    if (!LOOPBACK_NAMES.has(name) && door?.hosts.has(name) !== true) {
      return problem(context, `this server answers to 127.0.0.1 and localhost only, not to "${host}"`, 403);
    }
    if (door !== null && !isFromHere(context)) {
      const refused = refusedAtDoor(context, door);
      if (refused !== null) return problem(context, refused, 403);
    }
    if (!READING.has(context.req.method)) {
      const origin = context.req.header("origin");
      if (origin !== undefined && origin !== `${new URL(context.req.url).protocol}//${host}`) {
        return problem(
          context,
          `writing from ${origin} is not allowed: use the page that this server serves`,
          403,
        );
      }
      const site = context.req.header("sec-fetch-site");
      if (site !== undefined && site !== "same-origin" && site !== "none") {
        return problem(
          context,
          "writing from another site is not allowed: use the page that this server serves",
          403,
        );
      }
    }
    await next();
    const headers = context.res.headers;
    headers.set("Content-Security-Policy", CONTENT_SECURITY_POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
  };
}

function hostOf(context: Context): string {
  return (context.req.header("host") ?? new URL(context.req.url).host).toLowerCase();
}

/** The name that a request calls says nothing of where it comes from: the other end of its wire does. */
function isFromHere(context: Context): boolean {
  const { incoming } = (context.env ?? {}) as { incoming?: { socket?: { remoteAddress?: string } } };
  const address = incoming?.socket?.remoteAddress?.replace(/^::ffff:/, "") ?? "";
  return address === "" || address === "::1" || address.startsWith("127.");
}
