/** As much of the distinguished encoding rules (ITU-T X.690) as a certificate needs. */

const TAG = {
  boolean: 0x01,
  integer: 0x02,
  bits: 0x03,
  octets: 0x04,
  oid: 0x06,
  utf8: 0x0c,
  sequence: 0x30,
  set: 0x31,
  generalizedTime: 0x18,
  utcTime: 0x17,
} as const;

function lengthOf(size: number): Buffer {
  if (size < 0x80) return Buffer.from([size]);
  const digits = Buffer.from(size.toString(16).padStart(size > 0xff ? 4 : 2, "0"), "hex");
  return Buffer.concat([Buffer.from([0x80 | digits.length]), digits]);
}

/** One value: its tag, its length (below 64 KB), its content. */
export function tagged(tag: number, ...content: readonly Uint8Array[]): Buffer {
  const whole = Buffer.concat(content);
  return Buffer.concat([Buffer.from([tag]), lengthOf(whole.length), whole]);
}

export const sequence = (...of: readonly Uint8Array[]): Buffer => tagged(TAG.sequence, ...of);
export const setOf = (...of: readonly Uint8Array[]): Buffer => tagged(TAG.set, ...of);
export const octets = (content: Uint8Array): Buffer => tagged(TAG.octets, content);
export const utf8 = (text: string): Buffer => tagged(TAG.utf8, Buffer.from(text, "utf8"));
export const yes = (): Buffer => tagged(TAG.boolean, Buffer.from([0xff]));

/** A whole number from its bytes, highest first; never negative. */
export function integer(bytes: Uint8Array): Buffer {
  return tagged(
    TAG.integer,
    ((bytes[0] ?? 0) & 0x80) === 0 ? bytes : Buffer.concat([Buffer.from([0]), bytes]),
  );
}

/** @param unused - bits of the last byte that are not part of it */
export function bits(content: Uint8Array, unused = 0): Buffer {
  return tagged(TAG.bits, Buffer.from([unused]), content);
}

/** `1.2.840.10045.4.3.2` */
export function oid(dotted: string): Buffer {
  const [first = 0, second = 0, ...rest] = dotted.split(".").map(Number);
  const base128 = (arc: number): number[] => {
    const digits = [arc & 0x7f];
    for (let left = Math.floor(arc / 128); left > 0; left = Math.floor(left / 128))
      digits.unshift((left & 0x7f) | 0x80);
    return digits;
  };
  return tagged(TAG.oid, Buffer.from([40 * first + second, ...rest.flatMap(base128)]));
}

/** RFC 5280, 4.1.2.5: two digits of the year up to 2049, four from then on. */
export function time(at: Date): Buffer {
  const text = `${at.toISOString().replace(/[-:T]/g, "").slice(0, 14)}Z`;
  return at.getUTCFullYear() < 2050
    ? tagged(TAG.utcTime, Buffer.from(text.slice(2)))
    : tagged(TAG.generalizedTime, Buffer.from(text));
}
