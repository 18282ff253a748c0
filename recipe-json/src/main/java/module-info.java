/** Recipes and bodies as JSON. */
module org.oaktag.recipe.json {
    requires transitive org.oaktag.blocks;
    requires com.fasterxml.jackson.databind;
    requires static org.jspecify;

    exports org.oaktag.recipe.json;
}
