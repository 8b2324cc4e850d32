// @ts-check
/** Une question sur le site de quelqu’un d’autre. */

/** @satisfies {import("../books.d.ts").Texts<"embed">} */
export default {
  cannotShow: "Cette question ne peut pas être affichée ici. {why}",
  noQuestion: "Il n’y a pas de question nommée « {name} ». Il y a {list}.",
  tooLong: "Ce qui se trouve dans « {name} » est trop long.",
  notObject: "Ce qui se trouve dans « {name} » n’est pas un objet JSON.",
  unreadable: "Ses chiffres sont illisibles.",
  notLoaded: "Elle n’a pas pu être chargée. Vérifie la connexion et recharge la page.",
  backToStart: "Revenir au début",
  allNumbers: "Tous les chiffres, dans Fasterby",

  holdsNumbers:
    "Les lignes contiennent les chiffres qui sont sur la page en ce moment, les tiens compris. Les visiteurs peuvent les changer ; rien de ce qu’ils saisissent ne quitte leur appareil.",
  withScripts: "Pour ta page, là où les scripts sont permis",
  copyLines: "Copier les deux lignes",
  inFrame: "Dans un cadre, là où ils ne le sont pas",
  copyFrame: "Copier le cadre",
  copied: "C’est copié.",
  selected: "C’est sélectionné : copie-le avec ton clavier.",
  workItOut: "Calcule-le dans Fasterby",
  contentPolicy:
    "Un site avec une politique de contenu a aussi besoin de : {directives}. Le cadre a besoin de : {frame}.",
  keepStill:
    "Pour que ta page reste immobile pendant que la question se charge, donne-lui de la place dans ta propre feuille de style : {rule}",
};
