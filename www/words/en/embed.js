// @ts-check
/** A question on somebody else's site. */

export default /** @type {const} */ ({
  cannotShow: "This question cannot be shown here. {why}",
  noQuestion: "There is no question called “{name}”. The questions are {list}.",
  tooLong: "What is in “{name}” is too long.",
  notObject: "What is in “{name}” is not a JSON object.",
  unreadable: "Its numbers cannot be read.",
  notLoaded: "It could not be loaded. Check the connection and reload the page.",
  backToStart: "Back to the start",
  allNumbers: "All the numbers, in Fasterby",

  // The lines for a site.
  holdsNumbers:
    "The lines hold the numbers that are on the page now, yours among them. Visitors may change them; nothing they enter leaves their device.",
  withScripts: "For your page, where scripts are allowed",
  copyLines: "Copy the two lines",
  inFrame: "In a frame, where they are not",
  copyFrame: "Copy the frame",
  copied: "It is copied.",
  selected: "It is selected: copy it with your keyboard.",
  workItOut: "Work it out in Fasterby",
  contentPolicy: "A site with a content policy also needs: {directives}. The frame needs: {frame}.",
  keepStill: "To keep your page still while the question loads, give it room in your own style sheet: {rule}",
});
