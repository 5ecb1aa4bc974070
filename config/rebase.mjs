export const developmentOrigin = "https://localhost:3000";

/** The text with every development address replaced by the same one at `origin`; only an https origin is taken. */
export const rebase = (text, origin) => {
  let url;
  try {
    url = new URL(origin);
  } catch {
    throw new Error(`--origin takes an https address such as https://addins.example.com; "${origin ?? ""}" is not one`);
  }
  if (url.protocol !== "https:" || url.origin !== origin)
    throw new Error(
      `--origin takes an https origin without a path, such as https://addins.example.com; "${origin}" is not one`,
    );
  return text.replaceAll(developmentOrigin, origin);
};
