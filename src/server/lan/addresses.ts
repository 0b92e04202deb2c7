import { hostname, networkInterfaces } from "node:os";

/** The addresses (IPv4) by which other machines of the network reach this one. */
export function lanAddresses(): readonly string[] {
  return Object.values(networkInterfaces())
    .flatMap((entries) => entries ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal)
    .map(({ address }) => address);
}

/** The name that multicast DNS gives this machine, where it is one. */
export function localName(): readonly string[] {
  const [first = ""] = hostname().toLowerCase().split(".");
  return /^[a-z0-9][a-z0-9-]{0,62}$/.test(first) ? [`${first}.local`] : [];
}
