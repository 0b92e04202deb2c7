import { X509Certificate } from "node:crypto";
import { mkdtempSync, rmSync, statSync } from "node:fs";
import { createServer, request, type Server } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Hono } from "hono";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { acceptLog } from "../../job/accept-log.ts";
import { MemoryJobStore } from "../../store/memory/memory-job-store.ts";
import { makeApp } from "../app.ts";
import { startServer } from "../start-server.ts";
import { isPrivateAddress, makeAuthority, makeServerCertificate, pem } from "./certificate.ts";
import { keptIdentity } from "./kept-identity.ts";

const NOW = new Date();
const HOSTS = ["localhost", "127.0.0.1", "192.168.1.20", "bench.local"];
const folder = mkdtempSync(join(tmpdir(), "faultwright-lan-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const newStore = () => new MemoryJobStore(() => new Date().toISOString());

/** The status of an https answer, or the code of what was wrong with the certificate. */
function ask(url: string, trusted: Uint8Array | null, body?: string): Promise<number | string> {
  return new Promise((resolve) => {
    const how =
      body === undefined
        ? {}
        : { method: "POST", headers: { origin: new URL(url).origin, "content-type": "application/json" } };
    const call = request(url, { ...(trusted === null ? {} : { ca: pem(trusted) }), ...how }, (answer) => {
      answer.resume();
      resolve(answer.statusCode ?? 0);
    });
    call.on("error", (error: NodeJS.ErrnoException) => resolve(`${error.code}: ${error.message}`));
    call.end(body);
  });
}

describe("the certificate of a bench's own", () => {
  it("is signed by its authority, for the machine's addresses and names, and no authority itself", () => {
    const authority = makeAuthority(NOW);
    const own = new X509Certificate(authority.certificate);
    const server = new X509Certificate(makeServerCertificate(authority, HOSTS, NOW).certificate);
    expect(own.ca).toBe(true);
    expect(own.verify(own.publicKey)).toBe(true);
    expect(server.ca).toBe(false);
    expect(server.verify(own.publicKey)).toBe(true);
    expect(server.checkIssued(own)).toBe(true);
    expect(server.checkIP("192.168.1.20")).toBe("192.168.1.20");
    expect(server.checkHost("bench.local")).toBe("bench.local");
    const days = (Date.parse(server.validTo) - Date.parse(server.validFrom)) / 86_400_000;
    expect(days).toBe(397);
  });

  it("vouches for private addresses alone: a stolen authority makes no site of the internet", async () => {
    expect(["10.1.2.3", "172.31.0.1", "192.168.0.5"].every(isPrivateAddress)).toBe(true);
    expect(["8.8.8.8", "172.32.0.1", "bench.local"].some(isPrivateAddress)).toBe(false);
    const authority = makeAuthority(NOW);
    const outcome = async (hosts: readonly string[]): Promise<number | string> => {
      const made = makeServerCertificate(authority, hosts, NOW);
      const server: Server = createServer(
        { cert: pem(made.certificate), key: made.key },
        (_, answer) => void answer.end("here"),
      );
      await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
      const { port } = server.address() as AddressInfo;
      const answered = await ask(`https://127.0.0.1:${port}/`, authority.certificate);
      server.close();
      return answered;
    };
    expect(await outcome(["127.0.0.1"])).toBe(200);
    expect(await outcome(["127.0.0.1", "shop.example"])).toMatch(/permitted subtree violation/);
    expect(await outcome(["127.0.0.1", "8.8.8.8"])).toMatch(/permitted subtree violation/);
  });

  it("stays trusted from start to start, and its key is nobody else's to read", () => {
    const first = keptIdentity(folder, HOSTS, NOW);
    const second = keptIdentity(folder, [...HOSTS, "192.168.1.21", "8.8.8.8"], NOW);
    expect(Buffer.compare(first.authority, second.authority)).toBe(0);
    expect(second.code).toBe(first.code);
    const server = new X509Certificate(second.server.certificate);
    expect(server.checkIP("192.168.1.21")).toBe("192.168.1.21");
    expect(server.checkIP("8.8.8.8")).toBeUndefined();
    expect(statSync(join(folder, "lan.json")).mode & 0o777).toBe(0o600);
  });
});

describe("a bench that is open to its network", () => {
  let app: Hono;
  const door = { hosts: new Set(["192.168.1.20"]), code: "abcdefghjk", authority: new Uint8Array([48, 0]) };
  beforeAll(() => {
    app = makeApp({
      store: newStore(),
      acceptLog,
      newId: () => "made-here",
      boards: [],
      webRoot: "",
      report: () => undefined,
      door,
    });
  });
  const from = (remoteAddress: string, path: string, headers: Record<string, string> = {}) =>
    app.request(
      `http://192.168.1.20:4517${path}`,
      { headers: { host: "192.168.1.20:4517", ...headers } },
      { incoming: { socket: { remoteAddress } } },
    );

  it("lets another machine in that has shown the code, and none that has not", async () => {
    expect((await from("192.168.1.9", "/api/jobs")).status).toBe(403);
    expect((await from("192.168.1.9", "/enter?code=aaaaaaaaaa")).status).toBe(403);
    const entered = await from("192.168.1.9", "/enter?code=abcdefghjk");
    expect(entered.status).toBe(302);
    const cookie = entered.headers.get("set-cookie")?.split(";")[0] ?? "";
    expect((await from("192.168.1.9", "/api/jobs", { cookie })).status).toBe(200);
    expect((await from("192.168.1.9", "/api/jobs", { cookie: "faultwright-code=x" })).status).toBe(403);
  });

  it("is fooled by no name: who calls it 127.0.0.1 from elsewhere is still elsewhere", async () => {
    expect((await from("192.168.1.9", "/api/jobs", { host: "127.0.0.1:4517" })).status).toBe(403);
    expect((await from("::ffff:127.0.0.1", "/api/jobs", { host: "127.0.0.1:4517" })).status).toBe(200);
    expect((await from("192.168.1.9", "/enter?code=abcdefghjk", { host: "evil.example" })).status).toBe(403);
  });

  it("gives away its certificate to be trusted", async () => {
    const answer = await from("192.168.1.9", "/certificate");
    expect(answer.headers.get("content-type")).toBe("application/x-x509-ca-cert");
  });

  it("speaks https with whoever trusts it, and plain http beside it", async () => {
    const identity = keptIdentity(folder, HOSTS, NOW);
    const lan = { ...identity, hosts: ["127.0.0.1"] };
    const server = await startServer({ store: newStore(), boards: [], port: 0, lan });
    const secure = `${server.secureUrl}api/jobs`;
    expect(await ask(secure, identity.authority)).toBe(200);
    // a write from its own page is one, by https too
    expect(await ask(`${server.secureUrl}api/meter`, identity.authority, '{"kind":"none"}')).toBe(200);
    expect(await ask(secure, null)).toMatch(/SELF_SIGNED|UNABLE_TO_VERIFY/);
    expect((await fetch(`${server.url}api/jobs`)).status).toBe(200);
    await server.stop();
  });
});
