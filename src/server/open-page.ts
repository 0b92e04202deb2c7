import { spawn } from "node:child_process";

/** Asks the desktop to show the page. Where there is no desktop nothing happens: the address has been printed. */
export function openPage(url: string): void {
  const [command, ...first] = opener(process.platform);
  const child = spawn(command, [...first, url], { detached: true, stdio: "ignore" });
  child.on("error", () => undefined);
  child.unref();
}

function opener(platform: NodeJS.Platform): [string, ...string[]] {
  if (platform === "darwin") return ["open"];
  if (platform === "win32") return ["explorer.exe"];
  return ["xdg-open"];
}
