/** What a bench that is open to its network is known by, kept beside the jobs: its authority, its certificate, its access code. */
import { randomInt, X509Certificate } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isPrivateAddress, makeAuthority, makeServerCertificate, type Signed } from "./certificate.ts";

export interface Identity {
  readonly server: Signed;
  /** DER, for the phone that is to trust it */
  readonly authority: Uint8Array;
  /** whoever comes from another machine shows it once */
  readonly code: string;
}

/** Renewed when it runs out within this. */
const SPARE_MS = 30 * 86_400_000;
/** No letter or digit that is taken for another. */
const LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
const CODE_LENGTH = 10;

interface Kept {
  readonly authority: { readonly certificate: string; readonly key: string };
  readonly code: string;
}

/** The identity for these hosts: authority and code stay the same from start to start, so that a phone trusts them once. */
export function keptIdentity(dataDir: string, hosts: readonly string[], now: Date): Identity {
  const path = join(dataDir, "lan.json");
  const kept = readKept(path, now) ?? makeKept(now);
  mkdirSync(dataDir, { recursive: true });
  writeFileSync(path, `${JSON.stringify(kept)}\n`, { mode: 0o600 });
  const authority = {
    certificate: Buffer.from(kept.authority.certificate, "base64"),
    key: kept.authority.key,
  };
  const vouched = hosts.filter((host) => !/^[\d.]+$/.test(host) || isPrivateAddress(host));
  return {
    authority: authority.certificate,
    code: kept.code,
    server: makeServerCertificate(authority, vouched, now),
  };
}

function readKept(path: string, now: Date): Kept | null {
  try {
    const kept = JSON.parse(readFileSync(path, "utf8")) as Kept;
    const { validTo } = new X509Certificate(Buffer.from(kept.authority.certificate, "base64"));
    const lasts = Date.parse(validTo) - now.getTime() > SPARE_MS;
    return lasts && typeof kept.authority.key === "string" && /^[a-z2-9]{10}$/.test(kept.code) ? kept : null;
  } catch {
    // None yet, or not readable: a new one is made, and the phone is to trust that.
    return null;
  }
}

function makeKept(now: Date): Kept {
  const { certificate, key } = makeAuthority(now);
  const code = Array.from({ length: CODE_LENGTH }, () => LETTERS[randomInt(LETTERS.length)]).join("");
  return { authority: { certificate: Buffer.from(certificate).toString("base64"), key }, code };
}
