/** The bundler takes a style sheet out of the script that imports it. */
declare module "*.css";
