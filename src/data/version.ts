/** Made by generate from package.json and the data tables; do not edit. */
export const addInVersion = "1.0.0";
export const dataVersion = "4d0b26b6";
