/** Whether the one jar holds what it must and runs a script. What the scripts make is tested in the examples. */
@org.jspecify.annotations.NullMarked
package org.oaktag.all;
