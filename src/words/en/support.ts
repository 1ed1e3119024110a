/** The page of support and privacy, as markup; `contact` is a paragraph or nothing. */
export const support = {
  title: "Fieldsum: support and privacy",
  description: "What is collected (nothing), and what to do when a cell shows an error.",
  questions: "Questions, and numbers that look wrong:",
  body: (contact: string, version: string) => `<h1>Support and privacy</h1>
<h2>Privacy</h2>
<p>Nothing is collected. The functions compute on your own computer or in your own browser from the
arguments you give them; they read no other cell and send nothing, and what they solved last stays in
memory until Excel or the page is closed. The pane reads the open workbook when you ask it to:
typing a reference in an example reads the cells it names, opening Names or a ready-made sheet reads
the names and the sheets there are, Check reads the formulas of the active sheet, and Picture reads
the selected table. It writes only when you press a button. Nothing that it reads leaves your
computer. There are no accounts, no cookies, no measuring of use and no third parties, save that
Excel itself loads its own script for add-ins from its publisher's address, as it does for every
add-in.</p>
<h2>Support</h2>
${contact}<p>Fieldsum is free software under the MIT license, with no warranty. Ask whoever put it into your
Excel first: they can see how it was installed. A wrong number is the worst fault: report it with
the formula, the values of its arguments, the result, and where the right value is published, to
the place from which the source code came to you.</p>
<h2>When a cell shows an error</h2>
<ul>
<li><b>#VALUE!</b>: an argument is not what the function takes. Hold the pointer over the warning
sign beside the cell: the message names the argument, what came and what is allowed.</li>
<li><b>#N/A</b>: the arguments are sound, but there is no answer; the message says why.</li>
<li><b>#NAME?</b>: the add-in is not loaded in this workbook yet, or the name is misspelt. Choose
Home, Add-ins, Fieldsum; if the cells stay so, open the pane, choose Check, then "Enter these cells
again".</li>
<li><b>#SPILL!</b>: the result needs more empty cells below or beside it.</li>
<li><b>#BUSY!</b>: Excel is waiting for something, often an open dialog. Close it.</li>
</ul>
<h2>What the numbers are, and are not</h2>
<p>The functions are the trade's published formulas, checked as the sources page lists. They know
what their arguments say and no more. Where pressure, electricity, water edges, towing or a code is
concerned, the manufacturer's instructions, the local rules and a licensed professional come first.</p>
<p class="quiet">Version ${version}</p>`,
} as const;
