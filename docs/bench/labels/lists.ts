import type { AllListWords } from "./field-words.js";

/** What the lists of the form say, in English. */
export const englishLists: AllListWords = {
  layers: {
    heading: "What lies in the rabbet",
    add: "Add a layer",
    row: ({ number }) => `layer ${number}`,
    remove: ({ number }) => `Remove layer ${number}`,
    cell: ({ label, number }) => `${label} of layer ${number}`,
    unnamed: ({ number }) => `layer ${number}`,
    columns: {
      name: {
        label: "Layer",
        explain: "What lies in the rabbet, from the front: glass, mount, picture, backing.",
        placeholder: "glass",
      },
      thickness: { label: "Thickness", explain: "Of this layer." },
      material: {
        label: "Made of",
        explain: "For what it weighs and how it moves.",
        choices: {
          "": "not said",
          glass: "glass",
          acrylic: "acrylic",
          molding: "the wood of the molding, in one piece",
          sheet: "another sheet, of the density beside it",
        },
      },
      density: {
        label: "Density",
        explain: "Of another sheet, in kg/m³: its data sheet says it, or a weighed piece divided by its volume.",
        placeholder: "kg/m³",
      },
      cost: { label: "Cost", explain: "Of one, in any money.", placeholder: "not said" },
    },
  },
  sticks: {
    heading: "Sticks",
    add: "Add another kind of stick",
    row: ({ number }) => `stick ${number}`,
    remove: ({ number }) => `Remove stick ${number}`,
    cell: ({ label, number }) => `${label} of stick ${number}`,
    unnamed: ({ number, isOnly }) => (isOnly ? "stick" : `stick ${number}`),
    columns: {
      length: { label: "Length", explain: "Of a stick, which is molding as it is bought." },
      count: { label: "How many", explain: "Left empty: as many as it takes.", placeholder: "any" },
      cost: {
        label: "Cost",
        explain: "Of one stick, in any money. Left empty: its length, so that the least molding is used.",
        placeholder: "length",
      },
      name: { label: "Name", explain: "What to call it on the sheet.", placeholder: "stick" },
    },
  },
};
