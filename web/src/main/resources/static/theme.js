// Keeps the chosen light on the screen. Without this file the choice goes with the next form that is sent.
(function () {
  "use strict";
  var KEY = "trimwright-theme";
  var KNOWN = ["light", "dark", "sun"];
  var root = document.documentElement;

  function stored() {
    try {
      return localStorage.getItem(KEY);
    } catch (e) {
      return null; // Storage can be shut off; the page then starts in the theme of its address.
    }
  }

  function store(theme) {
    try {
      localStorage.setItem(KEY, theme);
    } catch (e) {
      // As above: the choice then lasts as long as the page.
    }
  }

  var asked = new URLSearchParams(location.search).get("theme");
  var theme = KNOWN.indexOf(asked) >= 0 ? asked : stored();
  if (KNOWN.indexOf(theme) >= 0) {
    root.dataset.theme = theme; // Before the first paint, so that nothing flashes.
    if (theme === asked) {
      store(theme);
    }
  }

  document.addEventListener("DOMContentLoaded", function () {
    document.querySelectorAll("input[name=theme]").forEach(function (input) {
      input.checked = input.value === root.dataset.theme;
      input.addEventListener("change", function () {
        root.dataset.theme = input.value;
        store(input.value);
        rewriteLinks(input.value);
      });
    });
    rewriteLinks(root.dataset.theme);
  });

  // Links that name a theme follow the choice, or the next page would undo it.
  function rewriteLinks(theme) {
    document.querySelectorAll("a[href*='theme=']").forEach(function (link) {
      link.href = link.getAttribute("href").replace(/theme=[a-z]+/, "theme=" + theme);
    });
    var here = new URL(location.href);
    if (here.searchParams.has("theme")) {
      here.searchParams.set("theme", theme);
      history.replaceState(null, "", here);
    }
  }
})();
