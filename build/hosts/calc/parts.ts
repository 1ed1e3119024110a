import { exportNameOf } from "../../../src/functions/export-name";
import type { ArgumentHelp, FunctionHelp, Reference } from "../../../src/reference";
import { escaped } from "../../html";

/**
 * What the program knows the extension by. A saved document names every function by SERVICE and the
 * method, so neither may ever change.
 */
export const EXTENSION_ID = "fieldsum.calc";
const MODULE = "fieldsum";
const SERVICE = `${MODULE}.Functions`;
const MENU = `${MODULE}.Menu`;
const OPENED = `${MODULE}.Opened`;

/** The oldest release whose own Python and add-in interface are as these files need them. */
const OLDEST = "7.0";

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>';
const CONFIGURATION =
  'xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"';

/** LATERAL_PRESSURE is the method lateralPressure. */
export function methodOf({ id }: FunctionHelp): string {
  return exportNameOf(id);
}

/** The program knows arguments by the names that the interface gives them. */
function parameterOf(_: ArgumentHelp, place: number): string {
  return `a${place + 1}`;
}

/**
 * The methods. An argument that must be given is a table, for those the program knows to ask for; a
 * single value reaches it as a table of one. One that may be left out is "any".
 */
export function interfaceText({ functions }: Reference): string {
  const table = "sequence< sequence< any > >";
  const methods = functions.map((help) => {
    const parameters = help.arguments.map(
      (argument, place) =>
        `[in] ${argument.optional ? "any" : table} ${parameterOf(argument, place)}`,
    );
    return `  ${help.spills ? table : "any"} ${methodOf(help)}(${parameters.join(", ")});`;
  });
  return `module ${MODULE} {\ninterface XFunctions {\n${methods.join("\n")}\n};\n};\n`;
}

/** Names and help of functions and arguments, for the program's wizard and hints. */
export function addIn({ namespace, functions }: Reference): string {
  const value = (name: string, text: string) =>
    `<prop oor:name="${name}"><value xml:lang="en-US">${escaped(text)}</value></prop>`;
  const nodes = functions.map((help) => {
    const parameters = help.arguments.map(
      (argument, place) =>
        `<node oor:name="${parameterOf(argument, place)}" oor:op="replace">` +
        `${value("DisplayName", argument.name)}${value("Description", argument.help)}</node>`,
    );
    return [
      `<node oor:name="${methodOf(help)}" oor:op="replace">`,
      value("DisplayName", `${namespace}.${help.name}`),
      value("Description", help.short),
      `<prop oor:name="Category"><value>Add-In</value></prop>`,
      `<prop oor:name="CompatibilityName"><value xml:lang="en-US">_xldudf_${namespace}_${help.id}</value></prop>`,
      `<node oor:name="Parameters">${parameters.join("\n")}</node>`,
      "</node>",
    ].join("\n");
  });
  return `${HEAD}
<oor:component-data ${CONFIGURATION} oor:name="CalcAddIns" oor:package="org.openoffice.Office">
<node oor:name="AddInInfo"><node oor:name="${SERVICE}" oor:op="replace"><node oor:name="AddInFunctions">
${nodes.join("\n")}
</node></node></node>
</oor:component-data>
`;
}

/** What the menu offers: the command that the component is called with, and the words. */
const ENTRIES: readonly (readonly [string, string])[] = [
  ["why", "Why this error?"],
  ["spread", "Spread this table over its cells"],
];

export function menu(): string {
  const entries = ENTRIES.map(
    ([command, title], i) => `<node oor:name="entry${i + 1}" oor:op="replace">
<prop oor:name="URL" oor:type="xs:string"><value>service:${MENU}?${command}</value></prop>
<prop oor:name="Title" oor:type="xs:string"><value xml:lang="en-US">${escaped(title)}</value></prop>
<prop oor:name="Target" oor:type="xs:string"><value>_self</value></prop>
<prop oor:name="Context" oor:type="xs:string"><value>com.sun.star.sheet.SpreadsheetDocument</value></prop>
</node>`,
  );
  return `${HEAD}
<oor:component-data ${CONFIGURATION} oor:name="Addons" oor:package="org.openoffice.Office">
<node oor:name="AddonUI"><node oor:name="OfficeMenuBar"><node oor:name="${EXTENSION_ID}.menu" oor:op="replace">
<prop oor:name="Title" oor:type="xs:string"><value xml:lang="en-US">Fieldsum</value></prop>
<prop oor:name="Context" oor:type="xs:string"><value>com.sun.star.sheet.SpreadsheetDocument</value></prop>
<node oor:name="Submenu">
${entries.join("\n")}
</node></node></node></node>
</oor:component-data>
`;
}

/** Runs when a document has been loaded. */
export function job(): string {
  return `${HEAD}
<oor:component-data ${CONFIGURATION} oor:name="Jobs" oor:package="org.openoffice.Office">
<node oor:name="Jobs"><node oor:name="${OPENED}" oor:op="replace"><prop oor:name="Service"><value>${OPENED}</value></prop></node></node>
<node oor:name="Events"><node oor:name="OnLoadFinished" oor:op="fuse"><node oor:name="JobList"><node oor:name="${OPENED}" oor:op="replace"/></node></node></node>
</oor:component-data>
`;
}

export function description(version: string): string {
  return `${HEAD}
<description xmlns="http://openoffice.org/extensions/description/2006" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:lo="http://libreoffice.org/extensions/description/2011">
<identifier value="${EXTENSION_ID}"/>
<version value="${version}"/>
<dependencies><lo:LibreOffice-minimal-version value="${OLDEST}" name="LibreOffice ${OLDEST}"/></dependencies>
<display-name><name lang="en">Fieldsum</name></display-name>
</description>
`;
}

export function packageManifest(): string {
  const configuration = "application/vnd.sun.star.configuration-data";
  const entries = [
    ["functions.idl", "application/vnd.sun.star.uno-typelibrary;type=RDB"],
    ["component.py", "application/vnd.sun.star.uno-component;type=Python"],
    ["CalcAddIns.xcu", configuration],
    ["Addons.xcu", configuration],
    ["Jobs.xcu", configuration],
  ].map(
    ([path, type]) =>
      `<manifest:file-entry manifest:full-path="${path}" manifest:media-type="${type}"/>`,
  );
  return `${HEAD}
<manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
${entries.join("\n")}
</manifest:manifest>
`;
}

/** What the component must know of the functions. */
export function catalogueModule({ namespace, functions }: Reference): string {
  const entries = functions.map((help) => {
    const parameters = help.arguments.map((argument) =>
      JSON.stringify([
        argument.name,
        argument.help,
        argument.optional ? 1 : 0,
        argument.range ? 1 : 0,
        argument.yesNo === true ? 1 : 0,
      ]),
    );
    const head = [help.id, `${namespace}.${help.name}`, help.short].map((one) =>
      JSON.stringify(one),
    );
    const rows = parameters.map((one) => `        ${one},`);
    return `    ${JSON.stringify(methodOf(help))}: (${head.join(", ")}, ${help.spills ? 1 : 0}, [\n${rows.join("\n")}\n    ]),`;
  });
  return `"""The functions by method: id, name, help, whether a table results, and the arguments:
name, help, and whether each may be left out, takes a range, and takes TRUE or FALSE."""

NAMESPACE = ${JSON.stringify(namespace)}
SERVICE = ${JSON.stringify(SERVICE)}
FUNCTIONS = {
${entries.join("\n")}
}
`;
}
