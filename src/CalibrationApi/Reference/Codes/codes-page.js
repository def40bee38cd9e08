// Shows the codes in which every word typed occurs. Without this script the box is not there, and the page holds all codes.
const box = document.querySelector("[type=search]");
const found = document.querySelector("output");
const codes = [...document.querySelectorAll("article")].map(article => ({ article, text: article.textContent.toLowerCase() }));
const sections = [...document.querySelectorAll("section")];

function search() {
  const words = box.value.toLowerCase().split(/\s+/).filter(word => word !== "");
  let shown = 0;
  for (const { article, text } of codes) {
    article.hidden = !words.every(word => text.includes(word));
    shown += article.hidden ? 0 : 1;
  }
  for (const section of sections)
    section.hidden = section.querySelector("article:not([hidden])") === null;
  found.textContent = words.length === 0 ? "" : shown === 0 ? "No code has these words." : `${shown} of ${codes.length} codes`;
}

// A link to a code that the search hides has to lead to it all the same.
function leave() {
  if (document.querySelector("article:target")?.hidden) {
    box.value = "";
    search();
    document.querySelector("article:target").scrollIntoView();
  }
}

box.addEventListener("input", search);
window.addEventListener("hashchange", leave);
box.closest("label").hidden = false;
search();
