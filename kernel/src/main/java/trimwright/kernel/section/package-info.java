/** Wing sections: shapes, the flow about them, their lift, drag, moment and lift limit. */
package trimwright.kernel.section;
