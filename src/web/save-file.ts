/** Hands a text to the browser as a file to save. */
export function saveFile(name: string, type: "application/json" | "text/html", text: string): void {
  saveBlob(name, new Blob([text], { type }));
}

export function saveBlob(name: string, data: Blob): void {
  const url = URL.createObjectURL(data);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  URL.revokeObjectURL(url);
}
