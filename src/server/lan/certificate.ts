/**
 * A certificate of the bench's own (RFC 5280), so that a phone on the shop's network can speak https with it. The phone is made to trust the
 * authority; that is bound to private addresses and local names, so that even a stolen one vouches for nothing on the internet.
 */
import {
  createHash,
  createPrivateKey,
  generateKeyPairSync,
  type KeyObject,
  randomBytes,
  sign,
} from "node:crypto";
import { isIPv4 } from "node:net";
import { bits, integer, octets, oid, sequence, setOf, tagged, time, utf8, yes } from "./der.ts";

const AUTHORITY_NAME = "Faultwright bench";
const DAY_MS = 86_400_000;
const AUTHORITY_DAYS = 3650;
/** The longest that phones accept of a server. */
export const SERVER_DAYS = 397;

/** RFC 1918, 5735, 3927 and 6598: networks that are nobody's on the internet, with their masks. */
const PRIVATE_NETWORKS = [
  ["10.0.0.0", "255.0.0.0"],
  ["172.16.0.0", "255.240.0.0"],
  ["192.168.0.0", "255.255.0.0"],
  ["127.0.0.0", "255.0.0.0"],
  ["169.254.0.0", "255.255.0.0"],
  ["100.64.0.0", "255.192.0.0"],
] as const;
const LOCAL_NAMES = ["localhost", "local"];

export interface Signed {
  /** the certificate, DER */
  readonly certificate: Uint8Array;
  /** its private key, PKCS#8 in PEM */
  readonly key: string;
}

export function pem(certificate: Uint8Array): string {
  const lines =
    Buffer.from(certificate)
      .toString("base64")
      .match(/.{1,64}/g) ?? [];
  return `-----BEGIN CERTIFICATE-----\n${lines.join("\n")}\n-----END CERTIFICATE-----\n`;
}

/** An address that the authority may vouch for. */
export function isPrivateAddress(address: string): boolean {
  return (
    isIPv4(address) &&
    PRIVATE_NETWORKS.some(([network, mask]) => {
      const [of, net, masked] = [bytesOf(address), bytesOf(network), bytesOf(mask)];
      return of.every((byte, at) => (byte & (masked[at] ?? 0)) === net[at]);
    })
  );
}

function bytesOf(address: string): Buffer {
  return Buffer.from(address.split(".").map(Number));
}

/** Of GeneralName: `dNSName` and `iPAddress`. */
const dnsName = (name: string) => tagged(0x82, Buffer.from(name));
const ipAddress = (bytes: Uint8Array) => tagged(0x87, bytes);

function name(common: string): Buffer {
  return sequence(setOf(sequence(oid("2.5.4.3"), utf8(common))));
}

function extension(id: string, critical: boolean, value: Uint8Array): Buffer {
  return sequence(oid(id), ...(critical ? [yes()] : []), octets(value));
}

const ECDSA_SHA256 = () => sequence(oid("1.2.840.10045.4.3.2"));

function keyId(spki: Uint8Array): Buffer {
  return createHash("sha1").update(spki).digest();
}

interface Content {
  readonly issuer: string;
  readonly subject: string;
  readonly from: Date;
  readonly days: number;
  readonly spki: Buffer;
  readonly extensions: readonly Uint8Array[];
}

function signed(content: Content, by: KeyObject): Buffer {
  const until = new Date(content.from.getTime() + content.days * DAY_MS);
  const toBeSigned = sequence(
    tagged(0xa0, integer(Buffer.from([2]))),
    integer(Buffer.concat([Buffer.from([0x40]), randomBytes(15)])),
    ECDSA_SHA256(),
    name(content.issuer),
    sequence(time(content.from), time(until)),
    name(content.subject),
    content.spki,
    tagged(0xa3, sequence(...content.extensions)),
  );
  const signature = sign("sha256", toBeSigned, { key: by, dsaEncoding: "der" });
  return sequence(toBeSigned, ECDSA_SHA256(), bits(signature));
}

function freshKey(): { readonly key: KeyObject; readonly spki: Buffer; readonly text: string } {
  const { privateKey, publicKey } = generateKeyPairSync("ec", { namedCurve: "P-256" });
  return {
    key: privateKey,
    spki: publicKey.export({ type: "spki", format: "der" }),
    text: String(privateKey.export({ type: "pkcs8", format: "pem" })),
  };
}

/** The authority that a phone is made to trust. */
export function makeAuthority(now: Date): Signed {
  const { key, spki, text } = freshKey();
  const permitted = [
    ...LOCAL_NAMES.map((local) => sequence(dnsName(local))),
    ...PRIVATE_NETWORKS.map(([network, mask]) =>
      sequence(ipAddress(Buffer.concat([bytesOf(network), bytesOf(mask)]))),
    ),
  ];
  const certificate = signed(
    {
      issuer: AUTHORITY_NAME,
      subject: AUTHORITY_NAME,
      from: new Date(now.getTime() - DAY_MS),
      days: AUTHORITY_DAYS,
      spki,
      extensions: [
        // may sign servers, and no further authority
        extension("2.5.29.19", true, sequence(yes(), integer(Buffer.from([0])))),
        // keyCertSign
        extension("2.5.29.15", true, bits(Buffer.from([0x04]), 2)),
        extension("2.5.29.30", true, sequence(tagged(0xa0, ...permitted))),
        extension("2.5.29.14", false, octets(keyId(spki))),
      ],
    },
    key,
  );
  return { certificate, key: text };
}

/** @param hosts - addresses (IPv4) and names that the server is called by */
export function makeServerCertificate(authority: Signed, hosts: readonly string[], now: Date): Signed {
  const { spki, text } = freshKey();
  const authorityKey = createPrivateKey(authority.key);
  const alternatives = hosts.map((host) => (isIPv4(host) ? ipAddress(bytesOf(host)) : dnsName(host)));
  const certificate = signed(
    {
      issuer: AUTHORITY_NAME,
      subject: `${AUTHORITY_NAME}: server`,
      from: new Date(now.getTime() - DAY_MS),
      days: SERVER_DAYS,
      spki,
      extensions: [
        extension("2.5.29.19", true, sequence()),
        // digitalSignature
        extension("2.5.29.15", true, bits(Buffer.from([0x80]), 7)),
        // serverAuth
        extension("2.5.29.37", false, sequence(oid("1.3.6.1.5.5.7.3.1"))),
        extension("2.5.29.17", false, sequence(...alternatives)),
      ],
    },
    authorityKey,
  );
  return { certificate, key: text };
}
