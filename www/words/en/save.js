// @ts-check
/** What is taken away: files, and the printed page. */

export default /** @type {const} */ ({
  // Files.
  charts: "Charts",
  tables: "Tables, as they are shown",
  columns: "The figures behind the charts, in full and in SI units",
  question: "The whole question",
  askedAndAnswered: "What was asked and what was answered",
  chart: "Chart",
  table: "Table",
  saveAs: "Save “{name}” as {kind}",
  savedAs: "It is saved as {file}.",
  notSaved: "“{name}” could not be saved as {kind}: {why}",
  noPicture: "The picture could not be made.",
  stillWorking: "it is still being worked out.",
  "part.difference": "difference",
  "part.spread": "±",
  "part.wins": "first in how many",
  "part.share": "share of power",

  // The printed page.
  inputsAndLink: "Inputs and link",
  whatWentIn: "What went in",
  plusMinus: "(the truth lies within ± two times in three; a number without one is taken as exact)",
  input: "{label} **{value}**",
  inputKnown: "{label} **{value}**, {known}",
  linkTooLong: "The link to these numbers is too long for paper. Share it, or save the question as a file.",
  sameQuestion: "Open this link to ask the same question with these numbers: {link}",
  qrCode: "QR code of the link",

  // Inputs.
  typical: "typical",
  estimated: "estimated",
  measured: "measured",
  rows: { one: "{count} row", other: "{count} rows" },
  course: "Course",
  pointsOver: { one: "{count} point over {distance}", other: "{count} points over {distance}" },
  outAndBack: "Out and back",
  yes: "yes",
  no: "no",
  pressureFor: "Air pressure is given for",
  theCourse: "the course",
  seaLevel: "sea level",
  start: "Start",
  standing: "standing",
  rolling: "rolling",
  riderAndBicycle: "Rider and bicycle",
  position: "Position: {name}",
  power: "Power",
  conditions: "Conditions",
  theModel: "The model",
});
