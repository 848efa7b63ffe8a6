/**
 * Opens a document in a window of its own and asks to print it.
 *
 * @param page - the document
 * @returns false when the browser kept the window shut
 */
export function openPaper(page: string): boolean {
  const address = URL.createObjectURL(new Blob([page], { type: "text/html" }));
  const paper = window.open(address);
  if (paper === null) {
    URL.revokeObjectURL(address);
    return false;
  }
  paper.addEventListener("load", () => {
    URL.revokeObjectURL(address);
    paper.print();
  });
  return true;
}

/**
 * Hands a text to the browser to be saved as a file.
 *
 * @param name - the file's name
 * @param text - what is in it
 */
export function saveText(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
