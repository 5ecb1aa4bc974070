/** The worksheet's name of a core name: "sawHourValue" is "saw hour value". */
export const words = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
