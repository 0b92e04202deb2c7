/** Which instrument is on the wire, as the bench keeps it and as it is typed. */
import { said } from "../messages/said.ts";
import { quoted } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";

export type MeterSetting =
  | { readonly kind: "none" }
  /** SCPI over TCP */
  | { readonly kind: "scpi"; readonly host: string; readonly port: number }
  /** a driver of sigrok with its options, as `scpi-dmm:conn=/dev/usbtmc0`; of several channels one */
  | { readonly kind: "sigrok"; readonly driver: string; readonly channel: string | null };

/** `scpi-raw` in the list of port numbers of the IANA. */
const SCPI_PORT = 5025;
const HOST = /^(?:[A-Za-z0-9](?:[A-Za-z0-9.-]{0,251}[A-Za-z0-9])?|\[[0-9A-Fa-f:.]{2,45}\])$/;
/** Never a leading `-`: what is typed here becomes an argument of a program. */
const DRIVER = /^[a-z0-9][a-z0-9-]{0,60}(?::[a-z_]+=[A-Za-z0-9_./,=:-]{1,120})*$/;
const CHANNEL = /^[A-Za-z0-9][A-Za-z0-9_.-]{0,30}$/;

/** `192.168.1.20`, `meter.local:5025`, `[fe80::1]:5025`. */
export function parseScpiAddress(text: string): Parsed<MeterSetting> {
  const typed = text.trim();
  const [, host = typed, digits] = /^(.*):(\d{1,5})$/.exec(typed) ?? [];
  const port = digits === undefined ? SCPI_PORT : Number(digits);
  if (!HOST.test(host) || port < 1 || port > 65535)
    return refuse(
      said`${quoted(typed)} is no address; write the meter's name or number, as 192.168.1.20 or bench-meter:5025`,
    );
  return { ok: true, value: { kind: "scpi", host, port } };
}

export function parseSigrokDriver(text: string, channel = ""): Parsed<MeterSetting> {
  const typed = text.trim();
  if (!DRIVER.test(typed))
    return refuse(
      said`${quoted(typed)} is no driver; write one of the list, where needed with its wire, as scpi-dmm:conn=/dev/ttyUSB0`,
    );
  const wanted = channel.trim();
  if (wanted !== "" && !CHANNEL.test(wanted)) return refuse(said`${quoted(wanted)} is no channel; P1 is one`);
  return { ok: true, value: { kind: "sigrok", driver: typed, channel: wanted === "" ? null : wanted } };
}

/** A setting in one word, as the terminal takes it: `none`, `scpi:HOST:PORT`, `sigrok:DRIVER`. */
export function parseMeterWord(word: string): Parsed<MeterSetting> {
  if (word === "none") return { ok: true, value: { kind: "none" } };
  if (word.startsWith("scpi:")) return parseScpiAddress(word.slice("scpi:".length));
  if (word.startsWith("sigrok:")) return parseSigrokDriver(word.slice("sigrok:".length));
  return refuse(said`${quoted(word)} is no meter; write scpi:HOST:PORT or sigrok:DRIVER`);
}

/** A setting that came from outside, as it is kept and as the page sends it. */
export function readMeterSetting(input: unknown): Parsed<MeterSetting> {
  const given = (typeof input === "object" && input !== null ? input : {}) as Readonly<
    Record<string, unknown>
  >;
  const { kind, host, port, driver, channel } = given;
  if (kind === "none") return { ok: true, value: { kind } };
  if (kind === "scpi") return parseScpiAddress(`${String(host)}:${String(port ?? SCPI_PORT)}`);
  if (kind === "sigrok") return parseSigrokDriver(String(driver), channel == null ? "" : String(channel));
  return refuse(said`meter: kind must be "none", "scpi" or "sigrok"`);
}

function refuse(problem: string): { readonly ok: false; readonly problem: string } {
  return { ok: false, problem };
}
